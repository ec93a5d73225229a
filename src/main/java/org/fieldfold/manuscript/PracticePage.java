package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Practice;
import org.fieldfold.entry.Text;
import org.fieldfold.prose.Run;

/** Writes a practice's page: what it is good for, its steps, what goes wrong, and against whom it is used. */
final class PracticePage {
    private final Register register;
    private final Placed<Practice> placed;
    private final Practice practice;
    private final Reader reader;

    PracticePage(Register register, Placed<Practice> placed, Reader reader) {
        this.register = register;
        this.placed = placed;
        this.practice = placed.value();
        this.reader = reader;
    }

    Page page() {
        List<Block> top = new ArrayList<>();
        int tier = practice.tier();
        String beneath = tier == 1 || tier == 2
                ? reader.say("book.practice.tier", tier, reader.say("tier." + tier)) : "";
        top.add(new Block.Title(List.of(Run.plain(practice.name())), List.of(Run.plain(beneath)),
                placed.at("name")));
        List<Block.Plate> plates = register.figures(practice.id()).stream()
                .map(figure -> LooksWriter.plate(figure, reader.phrases())).toList();
        if (!plates.isEmpty()) {
            top.add(new Block.Plates(plates, placed.at("name")));
        }
        top.addAll(ProseBlocks.of(practice.summary().full(), placed.at("summary")));
        List<Page.Part> parts = new ArrayList<>();
        parts.add(new Page.Part("top", "", top));
        part("steps", "book.practice.steps", list(true, practice.steps(), "steps")).ifPresent(parts::add);
        part("sizes", "sizes.title", new PracticeTables(register, placed).blocks()).ifPresent(parts::add);
        part("watch", "book.practice.watch", watch()).ifPresent(parts::add);
        part("against", "book.practice.against", against()).ifPresent(parts::add);
        parts.add(register.standing(placed));
        return new Page(practice.id(), Page.Kind.PRACTICE, practice.name(), Places.PRACTICES, parts,
                placed.at("name"));
    }

    private Optional<Page.Part> part(String key, String phrase, List<Block> blocks) {
        return blocks.isEmpty() ? Optional.empty()
                : Optional.of(new Page.Part(key, reader.say(phrase), blocks));
    }

    private List<Block> list(boolean numbered, List<Text> texts, String key) {
        return texts.isEmpty() ? List.of() : List.of(new Block.Items(numbered,
                texts.stream().map(reader::read).toList(), placed.at(key)));
    }

    private List<Block> watch() {
        List<Block> blocks = new ArrayList<>(list(false, practice.watch(), "watch"));
        List<Block.Fact> facts = new ArrayList<>();
        practice.irrigation().ifPresent(text -> facts.add(
                new Block.Fact(reader.say("book.practice.irrigation"), reader.read(text))));
        practice.ventilation().ifPresent(text -> facts.add(
                new Block.Fact(reader.say("book.practice.ventilation"), reader.read(text))));
        practice.weeds().ifPresent(text -> facts.add(new Block.Fact(reader.say("book.practice.weeds"),
                reader.read(text))));
        if (!facts.isEmpty()) {
            blocks.add(new Block.Facts(facts, placed.at("watch")));
        }
        return blocks;
    }

    private List<Block> against() {
        List<Block.Tile> tiles = register.base().pests().values().stream().map(Placed::value)
                .filter(pest -> isUsedAgainst(pest, practice.id())).map(pest -> register.tile(pest.id())).toList();
        return tiles.isEmpty() ? List.of() : List.of(new Block.Tiles(tiles, placed.at("name")));
    }

    /** Whether a pest's measures name the practice. */
    static boolean isUsedAgainst(PestEntry pest, String practice) {
        return pest.controls().stream().anyMatch(control ->
                control instanceof Control.Cultural cultural
                        && cultural.practice().equals(Optional.of(practice))
                || control instanceof Control.Exclusion exclusion
                        && exclusion.practice().equals(Optional.of(practice)));
    }
}
