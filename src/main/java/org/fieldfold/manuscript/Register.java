package org.fieldfold.manuscript;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.GrowthStage;
import org.fieldfold.entry.LifeStage;
import org.fieldfold.entry.Names;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Reviewed;
import org.fieldfold.entry.Reviewer;
import org.fieldfold.entry.Source;
import org.fieldfold.entry.StageWindow;
import org.fieldfold.entry.Standing;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/** What the handbook's pages look up about each other: names, drawings, sources, and who signed. */
final class Register {
    private final ContentBase base;
    private final Phrases phrases;
    private final Map<String, List<Figure>> figures = new HashMap<>();

    Register(ContentBase base, Phrases phrases) {
        this.base = base;
        this.phrases = phrases;
    }

    ContentBase base() {
        return base;
    }

    Phrases phrases() {
        return phrases;
    }

    String say(String key, Object... parts) {
        return phrases.say(key, parts);
    }

    /** The name of a pest, natural enemy, practice or crop; its id where it is unknown. */
    String name(String id) {
        return names(id).map(Names::common)
                .or(() -> Optional.ofNullable(base.practices().get(id))
                        .map(practice -> practice.value().name()))
                .or(() -> Optional.ofNullable(base.crops().get(id)).map(crop -> crop.value().name()))
                .orElse(id);
    }

    boolean isEnemy(String id) {
        return !base.pests().containsKey(id) && base.enemies().containsKey(id);
    }

    private Optional<Names> names(String id) {
        return Optional.ofNullable(base.pests().get(id)).map(pest -> pest.value().names())
                .or(() -> Optional.ofNullable(base.enemies().get(id)).map(enemy -> enemy.value().names()));
    }

    /** The drawings of an entry, sorted once however often they are asked for. */
    List<Figure> figures(String id) {
        return figures.computeIfAbsent(id, this::sorted);
    }

    private List<Figure> sorted(String id) {
        if (base.pests().containsKey(id)) {
            var pest = base.pests().get(id).value();
            return base.figuresOf(id, pest.figures(), pest.stages());
        }
        if (base.enemies().containsKey(id)) {
            var enemy = base.enemies().get(id).value();
            return base.figuresOf(id, enemy.figures(), enemy.stages());
        }
        return base.figuresOf(id, List.of(), List.of());
    }

    /** The drawing of a stage, or else the first of the animal, or else any. */
    Optional<Figure> figure(String id, Optional<LifeStage> stage) {
        List<Figure> all = figures(id);
        return all.stream().filter(figure -> stage.isPresent() && figure.note().shows().stage().equals(stage))
                .findFirst()
                .or(() -> all.stream().filter(figure -> !figure.note().shows().showsDamage()).findFirst())
                .or(() -> all.stream().findFirst());
    }

    Optional<Figure> damageFigure(String id) {
        return figures(id).stream().filter(figure -> figure.note().shows().showsDamage()).findFirst();
    }

    /** A way to an entry, with the animal's drawing. */
    Block.Tile tile(String id) {
        List<Run> beneath = names(id).map(LooksWriter::scientificShort).orElse(List.of());
        return tile(id, figure(id, Optional.empty()), beneath);
    }

    Block.Tile tile(String id, Optional<Figure> figure, List<Run> beneath) {
        return new Block.Tile(Places.to(id), figure.map(Figure::id), name(id), beneath);
    }

    /** Names of entries, each a link; a dash for none. */
    List<Run> links(List<String> ids) {
        Line line = Line.of();
        for (String id : ids) {
            line.plain(line.isEmpty() ? "" : ", ").add(Run.plain(name(id)).to(Places.to(id)));
        }
        return line.isEmpty() ? List.of(Run.plain("–")) : line.runs();
    }

    /** Names of crops, each a link. */
    List<Run> crops(List<String> ids) {
        Line line = Line.of();
        for (String id : ids) {
            line.plain(line.isEmpty() ? "" : ", ");
            line.add(base.crops().containsKey(id) ? Run.plain(name(id)).to(Places.to(Places.crop(id)))
                    : Run.plain(id));
        }
        return line.runs();
    }

    List<PestEntry> pestsOf(String crop) {
        return base.pests().values().stream().map(Placed::value).filter(pest -> pest.crops().contains(crop))
                .toList();
    }

    /** For what is chosen once and then the same in every language. */
    Stream<PestEntry> pestsById() {
        return base.pests().values().stream().map(Placed::value).sorted(Comparator.comparing(PestEntry::id));
    }

    /** A window of growth stages, by name where one crop alone is meant. */
    String stages(List<String> crops, StageWindow window) {
        List<GrowthStage> known = crops.size() == 1 && base.crops().containsKey(crops.get(0))
                ? base.crops().get(crops.get(0)).value().stages() : List.of();
        Optional<String> from = name(known, window.from());
        Optional<String> to = name(known, window.to());
        String codes = say("book.season.stages", window.from(), window.to());
        return from.isEmpty() || to.isEmpty() ? codes
                : from.equals(to) ? say("book.season.stage", from.get(), codes)
                : say("book.season.named", from.get(), to.get(), codes);
    }

    private static Optional<String> name(List<GrowthStage> stages, int code) {
        return stages.stream().filter(stage -> stage.from() <= code && code <= stage.to())
                .map(GrowthStage::name).findFirst();
    }

    /** A publication, as it is listed. */
    List<Run> source(String id) {
        Placed<Source> placed = base.sources().get(id);
        if (placed == null) {
            return List.of(Run.plain(id));
        }
        Source source = placed.value();
        Line line = Line.of()
                .plain(source.authors() + source.year().map(year -> " (" + year + ")").orElse("") + ". ")
                .add(new Run(source.title(), Run.Style.EMPHASIS, "").in(language(placed, "title")));
        source.published().ifPresent(where ->
                line.plain(". ").add(Run.plain(where).in(language(placed, "published"))));
        line.plain(source.title().endsWith(".") && source.published().isEmpty() ? "" : ".");
        if (source.standing() == Standing.VALUE_FROM_MEMORY) {
            line.plain(" ").strong(say("book.from-memory"));
        }
        return line.runs();
    }

    /** Titles stay as they are in another language, and are read aloud in their own. */
    private String language(Placed<?> placed, String key) {
        List<String> languages = base.edition().value().languages();
        boolean untranslated = placed.at(key).file().equals(placed.spans().file());
        return untranslated && !languages.isEmpty() && !languages.get(0).equals(phrases.language())
                ? languages.get(0) : "";
    }

    /** The same in a few words, for a table. */
    List<Run> brief(Optional<String> id) {
        Optional<Source> source = id.map(base.sources()::get).map(Placed::value);
        if (source.isEmpty()) {
            return List.of(Run.plain(id.orElse("–")));
        }
        String name = source.get().authors() + source.get().year().map(year -> " " + year).orElse("");
        return List.of(Run.plain(source.get().standing() == Standing.VALUE_FROM_MEMORY
                ? say("sources.memory.mark", name) : name).to(Places.to(Places.SOURCES)));
    }

    /** Sources, and who re-read the entry and when: the last part of every entry. */
    Page.Part standing(Placed<? extends Reviewed> placed) {
        Reviewed entry = placed.value();
        List<Block> blocks = new ArrayList<>();
        if (!entry.sources().isEmpty()) {
            blocks.add(new Block.Items(false, entry.sources().stream().map(this::source).toList(),
                    placed.at("sources")));
        }
        Span origin = placed.at("revised");
        String by = entry.reviser().map(this::reviewer).orElse(say("book.nobody"));
        blocks.add(new Block.Paragraph(List.of(Run.plain(entry.revised().map(day -> reread(day, by))
                .orElseGet(() -> say("book.not-reread")))), List.of(), origin));
        return new Page.Part("sources", say("sources"), blocks);
    }

    private String reread(LocalDate day, String by) {
        return say("book.reread", phrases.date(day), by);
    }

    private String reviewer(String id) {
        return base.edition().value().reviewers().stream().filter(reviewer -> reviewer.id().equals(id))
                .findFirst().map(Register::signature).orElse(id);
    }

    private static String signature(Reviewer reviewer) {
        return reviewer.name() + ", " + reviewer.role();
    }
}
