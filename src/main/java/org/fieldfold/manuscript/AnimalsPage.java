package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.LifeStage;
import org.fieldfold.entry.Names;
import org.fieldfold.entry.NaturalEnemy;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.StageDescription;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/** Writes the way to an entry from the animal itself: by stage, adults by kind; friends stand among them. */
final class AnimalsPage {
    private final Register register;
    private final Span origin;

    AnimalsPage(Register register) {
        this.register = register;
        this.origin = register.base().edition().at("title");
    }

    Page page() {
        Map<String, List<Block.Tile>> groups = new TreeMap<>();
        for (Placed<PestEntry> pest : register.base().pests().values()) {
            add(groups, pest.value().id(), pest.value().names(), pest.value().stages());
        }
        for (Placed<NaturalEnemy> enemy : register.base().enemies().values()) {
            add(groups, enemy.value().id(), enemy.value().names(), enemy.value().stages());
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Title(List.of(Run.plain(register.say("book.animals"))),
                List.of(Run.plain(register.say("book.animals.which"))), origin));
        groups.forEach((order, tiles) -> {
            blocks.add(new Block.Heading(3, List.of(Run.strong(order.substring(order.indexOf('|') + 1))),
                    origin));
            List<Block.Tile> drawn = tiles.stream().filter(tile -> tile.figure().isPresent()).toList();
            blocks.add(new Block.Tiles(drawn, origin));
            Line others = Line.of();
            tiles.stream().filter(tile -> tile.figure().isEmpty()).forEach(tile ->
                    others.plain(others.isEmpty() ? "" : " · ").add(Run.plain(tile.name()).to(tile.link())));
            if (!others.isEmpty()) {
                blocks.add(new Block.Facts(
                        List.of(new Block.Fact(register.say("book.not-drawn"), others.runs())), origin));
            }
        });
        return new Page(Places.ANIMALS, Page.Kind.LOOK, register.say("book.animals"), Places.LOOK,
                List.of(new Page.Part("top", "", blocks)), origin);
    }

    /** Groups sort by stage, then by kind: the key is the stage's number, a bar, and the heading. */
    private void add(Map<String, List<Block.Tile>> groups, String id, Names names,
            List<StageDescription> stages) {
        for (LifeStage stage : stages.stream().map(StageDescription::stage).distinct().toList()) {
            String heading = stage == LifeStage.ADULT
                    ? register.say("book.animals.adult", register.phrases().word("stage", stage),
                            names.kind())
                    : register.say("book.animals." + stage.name().toLowerCase(Locale.ROOT));
            Optional<Figure> drawing = register.figures(id).stream()
                    .filter(figure -> figure.note().shows().stage().equals(Optional.of(stage))).findFirst();
            List<Run> beneath = register.isEnemy(id) ? List.of(Run.strong(register.say("book.friend")))
                    : List.of(Run.plain(names.kind()));
            groups.computeIfAbsent(stage.ordinal() + "|" + heading, key -> new ArrayList<>())
                    .add(register.tile(id, drawing, beneath));
        }
    }
}
