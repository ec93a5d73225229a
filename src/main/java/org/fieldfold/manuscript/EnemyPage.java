package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.NaturalEnemy;
import org.fieldfold.entry.Placed;
import org.fieldfold.prose.Run;

/** Writes a natural enemy's page: how it is known, what it does, and how it is kept. */
final class EnemyPage {
    private final Register register;
    private final Placed<NaturalEnemy> placed;
    private final NaturalEnemy entry;
    private final Reader reader;

    EnemyPage(Register register, Placed<NaturalEnemy> placed, Reader reader) {
        this.register = register;
        this.placed = placed;
        this.entry = placed.value();
        this.reader = reader;
    }

    Page page() {
        return new Page(entry.id(), Page.Kind.ENEMY, entry.names().common(), Places.ENEMIES,
                List.of(new Page.Part("top", "", top()),
                        new Page.Part("look", reader.say("book.look"), look()),
                        new Page.Part("act", reader.say("book.keep"), keep()), register.standing(placed)),
                placed.at("names", "common"));
    }

    private List<Block> top() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Title(List.of(Run.plain(entry.names().common())),
                LooksWriter.scientific(entry.names(), true), placed.at("names")));
        blocks.add(new Block.Notice(Line.of().strong(reader.say("book.friend.long")).plain(" ")
                .add(reader.read(entry.helps())).runs(), placed.at("helps")));
        blocks.add(new Block.Facts(PestPage.names(register, entry.names(), List.of()), placed.at("names")));
        return blocks;
    }

    private List<Block> look() {
        List<Block> blocks = new ArrayList<>();
        List<Figure> figures = register.figures(entry.id());
        if (!figures.isEmpty()) {
            blocks.add(new Block.Plates(
                    figures.stream().map(figure -> LooksWriter.plate(figure, reader.phrases())).toList(),
                    placed.at("names")));
        }
        if (!entry.stages().isEmpty()) {
            blocks.add(new Block.Facts(PestPage.stages(register, entry.stages(), reader),
                    placed.at("stages")));
        }
        blocks.addAll(PestPage.sideBySide(register, placed, entry.id(), entry.lookAlikes(), reader));
        if (!entry.keepsDown().isEmpty()) {
            blocks.add(new Block.Heading(4, List.of(Run.strong(reader.say("book.keeps-down"))),
                    placed.at("keeps-down")));
            blocks.add(new Block.Tiles(entry.keepsDown().stream().map(register::tile).toList(),
                    placed.at("keeps-down")));
        }
        return blocks;
    }

    private List<Block> keep() {
        List<Block> blocks = new ArrayList<>(ProseBlocks.of(entry.conserve().full(), placed.at("conserve")));
        Optional<List<Block>> release = entry.release()
                .map(text -> ProseBlocks.of(text.full(), placed.at("release")));
        release.ifPresent(words -> {
            blocks.add(new Block.Heading(4, List.of(Run.strong(reader.say("book.release"))),
                    placed.at("release")));
            blocks.addAll(words);
        });
        return blocks;
    }
}
