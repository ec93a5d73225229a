package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.entry.Damage;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.LookAlike;
import org.fieldfold.entry.Names;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.StageDescription;
import org.fieldfold.prose.Run;

/**
 * Writes a pest's page: how it is known, what it is not and who its enemies are, its year, how to count, when
 * it pays to act, then the tiers in order, and what all this leans on.
 */
final class PestPage {
    private final Register register;
    private final Placed<PestEntry> placed;
    private final PestEntry entry;
    private final Reader reader;
    private final Calendars calendars;

    PestPage(Register register, Placed<PestEntry> placed, Reader reader, Calendars calendars) {
        this.register = register;
        this.placed = placed;
        this.entry = placed.value();
        this.reader = reader;
        this.calendars = calendars;
    }

    Page page() {
        List<Page.Part> parts = new ArrayList<>();
        parts.add(new Page.Part("top", "", top()));
        parts.add(new Page.Part("look", reader.say("book.look"), look()));
        addIfAny(parts, "year", reader.say("book.year"), year());
        addIfAny(parts, "count", reader.say("book.count"), new PestCounts(register, placed, reader).blocks());
        List<Block> act = new ArrayList<>(new TierWriter(register.base(), placed, reader).blocks());
        act.addAll(new SeasonTables(register, placed).blocks());
        addIfAny(parts, "act", reader.say("book.act"), act);
        parts.add(register.standing(placed));
        return new Page(entry.id(), Page.Kind.PEST, entry.names().common(), Places.CROPS, parts,
                placed.at("names", "common"));
    }

    private static void addIfAny(List<Page.Part> parts, String key, String name, List<Block> blocks) {
        if (!blocks.isEmpty()) {
            parts.add(new Page.Part(key, name, blocks));
        }
    }

    private List<Block> top() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new LooksWriter(register.base(), placed, reader).title());
        blocks.add(new Block.Facts(names(register, entry.names(), entry.crops()), placed.at("names")));
        return blocks;
    }

    static List<Block.Fact> names(Register register, Names names, List<String> crops) {
        List<Block.Fact> facts = new ArrayList<>();
        if (!crops.isEmpty()) {
            facts.add(new Block.Fact(register.say("book.on"), register.crops(crops)));
        }
        facts.add(Block.Fact.of(register.say("book.kind"), register.say("book.kind.of", names.kind(),
                names.family())));
        if (!names.local().isEmpty()) {
            facts.add(Block.Fact.of(register.say("book.also"), String.join(", ", names.local())));
        }
        return facts;
    }

    private List<Block> look() {
        List<Block> blocks = new ArrayList<>();
        new LooksWriter(register.base(), placed, reader).plates().ifPresent(blocks::add);
        List<List<Run>> damage = new ArrayList<>();
        for (Damage seen : entry.damage()) {
            damage.add(Line.of().strong(register.phrases().word("part", seen.part()) + ": ")
                    .add(reader.read(seen.text())).runs());
        }
        if (!damage.isEmpty()) {
            blocks.add(heading("book.damage"));
            blocks.add(new Block.Items(false, damage, placed.at("damage")));
        }
        if (!entry.stages().isEmpty()) {
            blocks.add(heading("book.stages"));
            blocks.add(new Block.Facts(stages(register, entry.stages(), reader), placed.at("stages")));
        }
        blocks.addAll(sideBySide(register, placed, entry.id(), entry.lookAlikes(), reader));
        if (!entry.spare().isEmpty()) {
            blocks.add(heading("book.friends-here"));
            blocks.add(new Block.Tiles(entry.spare().stream().map(id -> register.tile(id,
                    register.figure(id, Optional.empty()), List.of(Run.plain(reader.say("book.friend")))))
                    .toList(), placed.at("spare")));
        }
        return blocks;
    }

    static List<Block.Fact> stages(Register register, List<StageDescription> stages, Reader reader) {
        List<Block.Fact> facts = new ArrayList<>();
        for (StageDescription stage : stages) {
            Line line = Line.of().add(reader.read(stage.looks()));
            stage.found().ifPresent(where -> line.plain(" ").strong(reader.say("book.found") + " ")
                    .add(reader.read(where)).plain("."));
            facts.add(new Block.Fact(register.say("plate.size",
                    register.phrases().word("stage", stage.stage()),
                    register.phrases().measures().size(stage.size().from(), stage.size().to())), line.runs()));
        }
        return facts;
    }

    /** Each look-alike beside this one, the same stage where there is a drawing of it. */
    static List<Block> sideBySide(Register register, Placed<?> placed, String id, List<LookAlike> others,
            Reader reader) {
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < others.size(); i++) {
            if (i == 0) {
                blocks.add(new Block.Heading(4, List.of(Run.strong(reader.say("book.not-this"))),
                        placed.at("look-alikes")));
            }
            String other = others.get(i).entry();
            Optional<Figure> own = register.figure(id, Optional.empty());
            Optional<Figure> its =
                    register.figure(other, own.flatMap(figure -> figure.note().shows().stage()));
            String label = register.isEnemy(other) ? "book.friend" : register.isEnemy(id) ? "book.a-pest"
                    : "book.other";
            blocks.add(new Block.SideBySide(
                    new Block.Side(reader.say(register.isEnemy(id) ? "book.this-friend" : "book.this"),
                            register.name(id), "",
                            own.map(figure -> LooksWriter.plate(figure, reader.phrases()))),
                    new Block.Side(reader.say(label), register.name(other), Places.to(other),
                            its.map(figure -> LooksWriter.plate(figure, reader.phrases()))),
                    reader.read(others.get(i).mark()), placed.at("look-alikes", i)));
        }
        return blocks;
    }

    private List<Block> year() {
        List<Block> blocks = new ArrayList<>();
        entry.year().ifPresent(year -> blocks.addAll(ProseBlocks.of(year.full(), placed.at("year"))));
        entry.overwinters().ifPresent(place -> blocks.add(new Block.Facts(List.of(Block.Fact.of(
                reader.say("book.winter"), register.phrases().word("winter", place))),
                placed.at("overwinters"))));
        blocks.addAll(new UsualDates(register, calendars, placed).blocks(entry));
        return blocks;
    }

    private Block heading(String key) {
        return new Block.Heading(4, List.of(Run.strong(reader.say(key))), placed.at("names"));
    }
}
