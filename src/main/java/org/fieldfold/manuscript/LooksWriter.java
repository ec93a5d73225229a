package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Damage;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.LookAlike;
import org.fieldfold.entry.Names;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.ScientificName;
import org.fieldfold.entry.StageDescription;
import org.fieldfold.prose.Run;

/** Writes how a pest is known: its names, drawings, stages, what it does to the crop, and what it is not. */
final class LooksWriter {
    private static final int PLATES_IN_POCKET = 2;
    /** Together no longer than this, in mm: the narrowest pocket panel has 60 mm between its margins. */
    private static final double BARS_IN_POCKET = 54;

    private final ContentBase base;
    private final Placed<PestEntry> placed;
    private final PestEntry entry;
    private final Reader reader;

    LooksWriter(ContentBase base, Placed<PestEntry> placed, Reader reader) {
        this.base = base;
        this.placed = placed;
        this.entry = placed.value();
        this.reader = reader;
    }

    Block.Title title() {
        return new Block.Title(List.of(Run.plain(Phrases.capital(entry.names().common()))),
                scientific(entry.names(), !reader.pocket()), placed.at("names"));
    }

    /** A scientific name with its author, and with the year where there is room. */
    static List<Run> scientific(Names names, boolean withYear) {
        return ScientificName.read(names.scientific()).map(name -> {
            String author = withYear ? name.authorityAndYear() : name.authority();
            return Line.of().name(name.binomen()).plain(author.isEmpty() ? "" : " " + author).runs();
        }).orElseGet(() -> List.of(Run.name(names.scientific())));
    }

    /** Genus and species alone. */
    static List<Run> scientificShort(Names names) {
        return List.of(Run.name(ScientificName.read(names.scientific()).map(ScientificName::binomen)
                .orElse(names.scientific())));
    }

    Optional<Block> plates() {
        List<Block.Plate> plates = base.figuresOf(entry.id(), entry.figures(), entry.stages()).stream()
                .map(this::plate).toList();
        if (reader.pocket()) {
            plates = plates.subList(0, sideBySide(plates));
        }
        return plates.isEmpty() ? Optional.empty()
                : Optional.of(new Block.Plates(plates,
                        placed.at(entry.figures().isEmpty() ? "names" : "figures")));
    }

    /** How many of the first plates stand side by side in a pocket: true-size bars are never shortened. */
    private static int sideBySide(List<Block.Plate> plates) {
        double bars = 0;
        int count = 0;
        for (Block.Plate plate : plates) {
            bars += plate.trueSize().map(Block.Plate.Length::to).orElse(0.0);
            if (count > 0 && bars > BARS_IN_POCKET || count == PLATES_IN_POCKET) {
                break;
            }
            count++;
        }
        return count;
    }

    private Block.Plate plate(Figure figure) {
        return plate(figure, reader.phrases());
    }

    static Block.Plate plate(Figure figure, Phrases phrases) {
        Optional<Block.Plate.Length> size = figure.note().trueSize()
                .map(length -> new Block.Plate.Length(length.from(), length.to()));
        String caption = size.map(length -> phrases.say("plate.size", figure.note().caption(),
                phrases.measures().size(length.from(), length.to()))).orElse(figure.note().caption());
        return new Block.Plate(figure.id(), caption, figure.note().alt().orElse(figure.note().caption()),
                size);
    }

    /** 'Adult …; Larva …': the brief form keeps the stage that a scout meets first. */
    Optional<Block> stages() {
        if (entry.stages().isEmpty()) {
            return Optional.empty();
        }
        List<List<Run>> all = new ArrayList<>();
        for (StageDescription stage : entry.stages()) {
            all.add(Line.of().strong(reader.phrases().word("stage", stage.stage()) + " ")
                    .add(reader.read(stage.looks())).runs());
        }
        int shown = reader.pocket() ? Math.min(2, all.size()) : all.size();
        return Optional.of(joined(all.subList(0, shown), placed.at("stages")));
    }

    Optional<Block> damage() {
        List<List<Run>> all = new ArrayList<>();
        for (Damage damage : entry.damage()) {
            all.add(reader.read(damage.text()));
        }
        return led("damage", all, placed.at("damage"));
    }

    Optional<Block> lookAlikes() {
        List<List<Run>> all = new ArrayList<>();
        for (LookAlike other : entry.lookAlikes()) {
            List<Run> mark = reader.read(other.mark());
            all.add(reader.pocket() ? mark
                    : Line.of().add(Run.strong(name(other.entry())).to("#" + other.entry()))
                    .plain(": ").add(mark).runs());
        }
        return led("diff", all, placed.at("look-alikes"));
    }

    private String name(String id) {
        if (base.pests().containsKey(id)) {
            return base.pests().get(id).value().names().common();
        }
        return base.enemies().containsKey(id) ? base.enemies().get(id).value().names().common() : id;
    }

    private Optional<Block> led(String lead, List<List<Run>> sentences, org.fieldfold.source.Span origin) {
        if (sentences.isEmpty()) {
            return Optional.empty();
        }
        List<List<Run>> led = new ArrayList<>(sentences);
        led.set(0, Line.of().strong(reader.say(lead) + " ").add(sentences.get(0)).runs());
        return Optional.of(joined(led, origin));
    }

    private static Block.Paragraph joined(List<List<Run>> sentences, org.fieldfold.source.Span origin) {
        Line line = Line.of();
        sentences.forEach(line::sentence);
        return new Block.Paragraph(line.runs(), sentences.size() > 1 ? sentences.get(0) : List.of(), origin);
    }
}
