package org.fieldfold.manuscript;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Units;
import org.fieldfold.trace.KeptResults;
import org.fieldfold.trace.TranslatedTexts;

/**
 * The handbook from one state of a base to the next: a page is written again only when something that was read
 * for it has changed. For one base in one language; from build to build as well, when what is known is written down.
 */
public final class KeptPages {
    private final KeptResults<KnownUnit> kept = new KeptResults<>();
    private final Function<Object, Optional<String>> hash;
    private final boolean withFiles;
    private boolean isAsWritten;

    /** Of a book that is read page by page, without the files beside it. */
    public KeptPages() {
        this(unasked -> Optional.empty(), false);
    }

    /** @param hash of a page, and of the text of a file, by which others know that they are the same */
    public KeptPages(Function<Object, Optional<String>> hash) {
        this(hash, true);
    }

    private KeptPages(Function<Object, Optional<String>> hash, boolean withFiles) {
        this.hash = hash;
        this.withFiles = withFiles;
    }

    /** Goes on where another process was, whatever these bytes are. */
    public synchronized void goOn(byte[] bytes) {
        kept.goOn(bytes, new KnownUnit.Form());
    }

    /** What is known, for another process. */
    public synchronized byte[] bytes() {
        return kept.bytes(new KnownUnit.Form());
    }

    /** Whether nothing was written the last time. */
    public synchronized boolean isAsWritten() {
        return isAsWritten;
    }

    /**
     * The same book as {@link HandbookWriter#write} gives of the base in the order of names, in less time.
     *
     * @param content in its own language
     * @param hashes of the files that it was read from, by path
     * @param dates that were worked out before
     */
    public synchronized Book write(ContentBase content, Map<String, String> hashes, Phrases said, News news,
            Calendars dates, boolean proof) {
        ContentBase base = Alphabet.of(said.language()).order(content);
        return write(base, kept.round(base, hashes), said, news, dates.of(base), proof);
    }

    /**
     * The same of a base in another language.
     *
     * @param base as it was written
     * @param texts of each record the file in which its translated texts stand
     */
    public synchronized Book write(ContentBase content, ContentBase base, TranslatedTexts texts,
            Map<String, String> hashes, Phrases said, News news, Calendars dates, boolean proof) {
        ContentBase read = Alphabet.of(said.language()).order(content);
        return write(read, kept.round(read, base, said.language(), texts, hashes), said, news, dates.of(read), proof);
    }

    private Book write(ContentBase base, KeptResults<KnownUnit>.Round round, Phrases said, News news,
            Calendars dates, boolean proof) {
        Book book = new HandbookWriter(base, said, news, dates).write(proof, new Desk(base, round,
                said.with(Optional.of(Units.BOTH)), dates));
        isAsWritten = round.isAsBefore();
        round.end();
        return book;
    }

    /** The pests of a base in a view, and their hash. */
    private record Seen(SortedMap<String, Placed<PestEntry>> pests, Optional<String> hash) {
    }

    /** Where pages are written, or taken as they are known. */
    private final class Desk implements HandbookWriter.Desk {
        private final ContentBase base;
        private final KeptResults<KnownUnit>.Round round;
        private final Phrases phrases;
        private final Calendars dates;
        private final Register register;
        /** Whose offices nobody notes that they are read. */
        private final String region;
        private final Map<PestView, Seen> views = new EnumMap<>(PestView.class);

        Desk(ContentBase base, KeptResults<KnownUnit>.Round round, Phrases phrases, Calendars dates) {
            this.base = base;
            this.round = round;
            this.phrases = phrases;
            this.dates = dates;
            this.register = new Register(base, phrases);
            this.region = dates.named().toString();
        }

        @Override
        public List<Leaf> pages(String name, String of, HandbookWriter.Writing writing) {
            return pages(name, of + region, read -> writing.pages(new Register(read, phrases), dates.of(read)),
                    () -> writing.pages(register, dates));
        }

        @Override
        public List<Leaf> pages(String name, String of, PestView view, HandbookWriter.Writing writing) {
            Function<ContentBase, List<Page>> write = read -> writing.pages(new Register(read, phrases),
                    dates.of(read));
            return pages(name, of + region + seen(view).hash().orElse(""), read -> write.apply(in(view, read)),
                    () -> write.apply(in(view, base)));
        }

        private List<Leaf> pages(String name, String of, Function<ContentBase, List<Page>> write,
                Supplier<List<Page>> again) {
            KnownUnit unit = round.take(name, of, read -> KnownUnit.of(write.apply(read).stream().map(page ->
                    new KnownUnit.KnownPage(page.head(), hash.apply(page), Optional.of(page))).toList()));
            Supplier<List<Page>> once = new Once(again);
            return IntStream.range(0, unit.pages().size()).mapToObj(i -> leaf(unit.pages().get(i),
                    () -> once.get().get(i))).toList();
        }

        private Seen seen(PestView view) {
            return views.computeIfAbsent(view, first -> new Seen(view.of(base), hash(view)));
        }

        /** The hash of all pests in a view, in their order; empty where hashes are not known. */
        private Optional<String> hash(PestView view) {
            StringBuilder all = new StringBuilder();
            for (String id : base.pests().keySet()) {
                Optional<String> one = round.take(view + "/" + id, "", read -> KnownUnit.of(Optional.of(
                        new KnownUnit.KnownFile(id, hash.apply(view.of(read.pests().get(id)).value()))))).file()
                        .flatMap(KnownUnit.KnownFile::hash);
                if (one.isEmpty()) {
                    return one;
                }
                all.append(id).append(' ').append(one.get()).append('\n');
            }
            return hash.apply(all.toString());
        }

        /** Where the hash of its pests is known, that stands for them, and nobody notes that they are read. */
        private ContentBase in(PestView view, ContentBase read) {
            return PestView.in(read, seen(view).hash().isPresent() ? seen(view).pests() : view.of(read));
        }

        @Override
        public Leaf page(Page page) {
            return Leaf.of(page, hash.apply(page));
        }

        @Override
        public Optional<Enclosure> file(String name, HandbookWriter.Filing filing) {
            if (!withFiles) {
                return Optional.empty();
            }
            return round.take(name, region + seen(PestView.SEASON).hash().orElse(""), read -> KnownUnit.of(
                    file(read, filing).map(file -> new KnownUnit.KnownFile(file.name(), hash.apply(file.text()
                            .get()))))).file().map(known -> new Enclosure(known.name(), known.hash(),
                    () -> file(base, filing).orElseThrow().text().get()));
        }

        private Optional<Enclosure> file(ContentBase read, HandbookWriter.Filing filing) {
            ContentBase seasons = in(PestView.SEASON, read);
            return filing.file(seasons, dates.of(seasons));
        }
    }

    private static Leaf leaf(KnownUnit.KnownPage known, Supplier<Page> again) {
        return new Leaf(known.head(), known.hash(), () -> known.page().orElseGet(again));
    }

    /** Pages that are written when one of them is read, and then are at hand. */
    private static final class Once implements Supplier<List<Page>> {
        private final Supplier<List<Page>> write;
        private List<Page> pages = List.of();

        Once(Supplier<List<Page>> write) {
            this.write = write;
        }

        @Override
        public synchronized List<Page> get() {
            if (pages.isEmpty()) {
                pages = write.get();
            }
            return pages;
        }
    }
}
