package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.fieldfold.entry.ActiveIngredient;
import org.fieldfold.entry.Chapter;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Placed;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/**
 * Writes what is looked up: natural enemies and practices as lists, chapters, materials, cautions and
 * sources.
 */
final class ReferencePages {
    private final Register register;
    private final ContentBase base;
    private final Edition edition;
    private final Span origin;

    ReferencePages(Register register) {
        this.register = register;
        this.base = register.base();
        this.edition = base.edition().value();
        this.origin = base.edition().at("title");
    }

    Page enemies() {
        return list(Places.ENEMIES, "friends", List.of(new Block.Tiles(base.enemies().keySet().stream()
                .map(register::tile).toList(), origin)));
    }

    /** Practices by tier, the first tier first. */
    Page practices() {
        List<Block> blocks = new ArrayList<>();
        for (int tier = 1; tier <= 2; tier++) {
            int wanted = tier;
            List<Block.Tile> tiles = base.practices().values().stream().map(Placed::value)
                    .filter(practice -> practice.tier() == wanted)
                    .map(practice -> register.tile(practice.id(),
                            register.figures(practice.id()).stream().findFirst(),
                            List.of(Run.plain(practice.summary().pocket().words())))).toList();
            blocks.add(new Block.Heading(3, List.of(Run.strong(register.say("tier.head", tier,
                    register.say("tier." + tier)))), origin));
            blocks.add(new Block.Tiles(tiles, origin));
        }
        return list(Places.PRACTICES, "practices", blocks);
    }

    Page chapters() {
        return list(Places.CHAPTERS, "chapters", List.of(new Block.Items(false,
                base.chapters().values().stream().map(Placed::value)
                        .map(chapter -> List.of(Run.plain(chapter.title())
                                .to(Places.to(Places.chapter(chapter.id()))))).toList(), origin)));
    }

    Page chapter(String id) {
        Placed<Chapter> placed = base.chapters().get(id);
        Chapter chapter = placed.value();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Title(List.of(Run.plain(chapter.title())), List.of(), placed.at()));
        blocks.addAll(ProseBlocks.of(chapter.body(), placed.at()));
        return new Page(Places.chapter(chapter.id()), Page.Kind.CHAPTER, chapter.title(), Places.CHAPTERS,
                List.of(new Page.Part("top", "", blocks)), placed.at());
    }

    Page materials() {
        MaterialFacts facts = new MaterialFacts(register.phrases());
        List<List<List<Run>>> rows = new ArrayList<>();
        for (Placed<ActiveIngredient> placed : base.materials().values()) {
            ActiveIngredient material = placed.value();
            Line name = Line.of().strong(material.name());
            if (material.restrictedUse()) {
                name.plain(". ").strong(register.say("book.restricted"));
            }
            rows.add(List.of(name.runs(), plain(facts.group(material)), plain(facts.phi(material)),
                    plain(facts.rei(material)), plain(facts.bees(material)), plain(facts.organic(material)),
                    plain(facts.signal(material)), plain(material.labelChecked()
                            .map(day -> register.phrases().date(day)).orElse("–"))));
        }
        List<Block> blocks = new ArrayList<>(cautionBox());
        blocks.add(new Block.Paragraph(List.of(Run.plain(register.say("abbreviations"))), List.of(), origin));
        blocks.add(new Block.Grid(register.say("book.page.materials"),
                heads("name", "group", "phi", "rei", "bees", "organic", "signal", "checked"), rows, origin));
        return list(Places.MATERIALS, "materials", blocks);
    }

    Page cautions() {
        List<Block> blocks = new ArrayList<>(cautionBox());
        blocks.add(new Block.Paragraph(List.of(Run.plain(register.say("abbreviations"))), List.of(), origin));
        blocks.add(new Block.Heading(3, List.of(Run.strong(register.say("tiers"))), origin));
        for (int tier = 1; tier <= 3; tier++) {
            blocks.add(new Block.Tier(tier,
                    Line.of().strong(register.say("tier.head", tier, register.say("tier." + tier)))
                            .plain(register.say("tier.why." + tier)).runs(), List.of(),
                    tier == 3 ? List.of(Run.strong(register.say("caution.tier3"))) : List.of(), origin));
        }
        return list(Places.CAUTIONS, "cautions", blocks);
    }

    /** The edition's cautions: they stand in front of every list of materials. */
    private List<Block> cautionBox() {
        List<List<Run>> lines =
                new ArrayList<>(edition.cautions().stream().map(text -> text.full().line()).toList());
        lines.add(List.of(Run.plain(register.say("rates"))));
        return List.of(new Block.Notice(List.of(Run.strong(register.say("caution.tier3"))), origin),
                new Block.Items(false, lines, base.edition().at("cautions")));
    }

    Page sources() {
        Function<String, List<Run>> line = register::source;
        return list(Places.SOURCES, "sources", List.of(
                new Block.Paragraph(List.of(Run.plain(register.say("book.sources.why"))), List.of(), origin),
                new Block.Items(false, base.sources().keySet().stream().map(line).toList(), origin)));
    }

    private Page list(String id, String key, List<Block> blocks) {
        String name = register.say("book.page." + key);
        List<Block> all = new ArrayList<>();
        all.add(new Block.Title(List.of(Run.plain(name)),
                List.of(Run.plain(register.say("book.page." + key + ".why"))), origin));
        all.addAll(blocks);
        return new Page(id, Page.Kind.REFERENCE, name, Places.START,
                List.of(new Page.Part("top", "", all)), origin);
    }

    private List<List<Run>> heads(String... keys) {
        List<List<Run>> heads = new ArrayList<>();
        for (String key : keys) {
            heads.add(List.of(Run.strong(register.say("book.material." + key))));
        }
        return heads;
    }

    private static List<Run> plain(String words) {
        return List.of(Run.plain(words));
    }
}
