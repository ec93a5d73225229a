package org.fieldfold;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.check.Rulebook;
import org.fieldfold.content.InputFile;
import org.fieldfold.content.KeptReadings;
import org.fieldfold.content.LoadedBase;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.Placed;
import org.fieldfold.handbook.SinglePages;
import org.fieldfold.manuscript.KeptPages;
import org.fieldfold.manuscript.News;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.preview.Resource;
import org.fieldfold.preview.Shelf;
import org.fieldfold.source.Finding;
import org.fieldfold.translation.TranslatedBase;

/**
 * What the preview serves: for every entry what is shown of it, and the pages of the handbook. Each is made
 * when it is asked for; what cannot be made any more stays as it was when it could.
 */
final class PreviewDesk implements Shelf {
    private static final String BOOK = "/book/";
    private static final String FIGURES = "/figures/";
    private static final String RULES = "/rules/";
    private static final String ENTRY = "/entry/";

    private final Path content;
    private final Optional<LocalDate> asOf;
    private final Consumer<String> steps;
    private final KeptReadings kept = new KeptReadings();
    private final KeptJudging judging = new KeptJudging();
    private final KeptPages book = new KeptPages();
    private final PreviewGuides guides = new PreviewGuides();
    private final Map<String, Resource> own = PreviewPage.resources();
    private final Map<String, List<PreviewGuides.Shown>> lastPanels = new HashMap<>();
    private final Map<String, byte[]> lastPages = new HashMap<>();
    private final Map<String, Resource> views = new HashMap<>();
    private long version;
    private List<InputFile> inputs = List.of();
    private List<Finding> findings = List.of();
    private Optional<ContentBase> base = Optional.empty();
    private Map<String, String> hashes = Map.of();
    private Optional<Calendars> dates = Optional.empty();
    private Optional<SinglePages> pages = Optional.empty();
    private News news = News.NONE;
    private boolean stale;

    /** @param steps is told of every step of a renewal when it is done */
    PreviewDesk(Path content, Optional<LocalDate> asOf, Consumer<String> steps) {
        this.content = content;
        this.asOf = asOf;
        this.steps = steps;
    }

    /**
     * Reads what changed and judges it. Without an edition that can be used the base stays that of last time.
     *
     * @return the number of the version, from 1; that of last time when nothing in it has changed, as when an
     *     editor lays a file of its own beside
     * @throws IOException when the folder is not there or cannot be listed
     */
    synchronized long renew() throws IOException {
        LoadedBase loaded = kept.load(content);
        steps.accept("read");
        Compiler.Checked checked = Compiler.judge(loaded, content, asOf, judging);
        steps.accept("rules");
        if (loaded.inputs().equals(inputs) && checked.findings().equals(findings)) {
            return version;
        }
        inputs = loaded.inputs();
        findings = checked.findings();
        stale = checked.base().filter(read -> Languages.findings(read).isEmpty()).isEmpty();
        if (!stale) {
            ContentBase read = checked.base().get();
            news = News.of(checked.ledgers().before(read.edition().value().year()).map(last ->
                    judging.changes(last, judging.facts(loaded, read))));
            base = Optional.of(TranslatedBase.in(read, read.edition().value().languages().get(0)));
            hashes = KeptJudging.hashes(loaded);
            dates = Optional.of(dates.map(known -> known.after(read)).orElseGet(() -> new Calendars(read)));
            pages = Optional.empty();
        }
        steps.accept("changes");
        views.clear();
        return ++version;
    }

    /** Makes what is shown of some entries, so that it is there when they are asked for. */
    synchronized void prepare(Collection<String> entries) {
        entries.forEach(entry -> find(ENTRY + entry + ".json"));
    }

    @Override
    public synchronized Optional<Resource> find(String path) {
        if (own.containsKey(path)) {
            return Optional.of(own.get(path));
        }
        if (path.startsWith(BOOK)) {
            String file = path.substring(BOOK.length());
            return page(file).map(bytes -> Resource.named(file, bytes));
        }
        if (path.startsWith(FIGURES)) {
            return base.flatMap(known -> Optional.ofNullable(known.figures().get(path.substring(FIGURES.length()))))
                    .map(figure -> Resource.named(figure.value().file(), figure.value().bytes()));
        }
        if (path.startsWith(RULES)) {
            return Rulebook.explain(path.substring(RULES.length())).map(page -> Resource.named("rule.txt",
                    page.getBytes(java.nio.charset.StandardCharsets.UTF_8)));
        }
        if (path.startsWith(ENTRY) && path.endsWith(".json")) {
            return view(path.substring(ENTRY.length(), path.length() - ".json".length()));
        }
        return Optional.empty();
    }

    private Optional<Resource> view(String entry) {
        if (!views.containsKey(entry)) {
            List<PreviewPage.Listed> listed = base.map(PreviewPage::listed).orElse(List.of());
            if (!entry.isEmpty() && listed.stream().noneMatch(one -> one.id().equals(entry))) {
                return Optional.empty();
            }
            views.put(entry, Resource.named("view.json", make(entry, listed)));
        }
        return Optional.of(views.get(entry));
    }

    private byte[] make(String entry, List<PreviewPage.Listed> listed) {
        List<String> notes = new ArrayList<>();
        boolean unread = base.isPresent() && base.get().unread().containsKey(entry);
        if (stale) {
            notes.add("edition.yaml cannot be used as it is: what you see is as it was before.");
        } else if (unread) {
            notes.add("The file of this entry cannot be read: what you see is as it was before.");
        }
        List<PreviewGuides.Shown> panels = lastPanels.getOrDefault(entry, List.of());
        if (base.isPresent() && !stale && !unread && !entry.isEmpty()) {
            try {
                panels = guides.of(base.get(), entry, news, dates.orElseThrow());
                lastPanels.put(entry, panels);
                steps.accept("panel");
            } catch (IllegalArgumentException unprintable) {
                notes.add("The panel is as it was before: " + unprintable.getMessage());
            }
        }
        Optional<String> file = base.isEmpty() ? Optional.empty() : pages().file(entry);
        Optional<byte[]> page = file.flatMap(this::page);
        steps.accept("page");
        List<Finding> all = Stream.concat(findings.stream(), panels.stream().flatMap(shown ->
                shown.findings().stream())).distinct().sorted().toList();
        return PreviewPage.view(version, entry, listed, notes, panels, file.map(name -> BOOK + name),
                page, all);
    }

    /** A page of the handbook; that of an entry that cannot be read, as it was before. */
    private Optional<byte[]> page(String file) {
        if (base.isEmpty()) {
            return Optional.empty();
        }
        boolean unread = base.get().unread().keySet().stream().anyMatch(id -> pages().file(id)
                .filter(file::equals).isPresent());
        if (unread && lastPages.containsKey(file)) {
            return Optional.of(lastPages.get(file));
        }
        Optional<byte[]> made = pages().read(file);
        made.filter(bytes -> file.endsWith(".html") && !unread).ifPresent(bytes -> lastPages.put(file, bytes));
        return made;
    }

    private SinglePages pages() {
        if (pages.isEmpty()) {
            ContentBase known = base.orElseThrow();
            Phrases phrases = Phrases.in(known.edition().value().languages().get(0));
            pages = Optional.of(new SinglePages(known, phrases, book.write(known, hashes, phrases, news,
                    dates.orElseThrow(), false)));
        }
        return pages.get();
    }
}
