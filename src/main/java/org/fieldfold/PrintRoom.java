package org.fieldfold;

import java.io.IOException;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.Placed;
import org.fieldfold.fold.Imposition;
import org.fieldfold.kept.Kept;
import org.fieldfold.kept.Key;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.Section;
import org.fieldfold.pdf.Press;
import org.fieldfold.output.OutputFolder;
import org.fieldfold.pdf.PrintJob;
import org.fieldfold.report.FitRow;
import org.fieldfold.source.Finding;
import org.fieldfold.typeset.Learnt;
import org.fieldfold.typeset.Mark;
import org.fieldfold.typeset.PrintMeFirst;
import org.fieldfold.typeset.Setter;
import org.fieldfold.typeset.WordCase;

/** The press of a build, and what earlier builds printed on it. */
final class PrintRoom {
    /** What stands in many sheets as the very same object. */
    static final Set<Class<?>> SHARED = Set.of(Manuscript.class, Section.class, Imposition.class);

    /**
     * Every sheet carries these, so that a sign which one text has gained changes no other sheet: what stands
     * on the keys of a keyboard, and the letters of the languages that ship.
     */
    private static final String USUAL = "áéíóúüñÁÉÍÓÚÜÑ¿¡–—‘’“”·°";
    private static final String FOR_ALL = "foldouts/";
    private static final int FIRST_KEY = 0x20;
    private static final int LAST_KEY = 0x7E;

    private final Press press;
    private final Kept kept;
    private final Set<Integer> characters = new ConcurrentSkipListSet<>();
    /** Of the sheets that are printed before all others, which have nearly all their words in common. */
    private final Setter firsts;
    private final WordCase words;
    private final Map<String, KeptTrials> trials = new ConcurrentHashMap<>();
    private Optional<String> cut = Optional.empty();
    private boolean frozen;

    PrintRoom(Press press, Kept kept) {
        this.press = press;
        this.firsts = new Setter(press.metrics(), press.shapes());
        this.kept = kept;
        this.words = new WordCase(press.metrics());
        IntStream.rangeClosed(FIRST_KEY, LAST_KEY).forEach(characters::add);
        USUAL.codePoints().forEach(characters::add);
    }

    static PrintRoom of(ContentBase base, Kept kept) {
        Map<String, byte[]> figures = figures(base);
        return new PrintRoom(Press.of(figures, new KeptArt(kept, figures.keySet())), kept);
    }

    private static Map<String, byte[]> figures(ContentBase base) {
        Map<String, byte[]> figures = new HashMap<>(PrintMeFirst.figures());
        for (Placed<Figure> figure : base.figures().values()) {
            figures.put(figure.value().id(), figure.value().bytes());
        }
        return figures;
    }

    /** The hashes of the base's figures, by what manuscripts call them. */
    static Map<String, String> hashes(ContentBase base) {
        Map<String, String> hashes = new TreeMap<>();
        base.figures().values().forEach(figure -> hashes.put(figure.value().id(), figure.value().sha256()));
        return hashes;
    }

    /**
     * Sets what is asked for.
     *
     * @param learnt from guides that may have something in common with it
     */
    Setting.Set set(Setting setting, Learnt learnt) {
        return setting.set(press, learnt);
    }

    /** Sets one of the sheets that are printed before all others. */
    Setting.Set first(Setting setting) {
        return setting.set(press, firsts);
    }

    /**
     * What is known from earlier builds and guides, for the copies of a guide that everybody gets; more is learnt
     * from them.
     *
     * @param name of the sheet, without its folder and ending
     */
    Learnt learnt(String name) {
        return new Learnt(trials(name), words.beside());
    }

    /** The same for one copy of an office, of which nothing is kept. */
    Learnt known(String name) {
        return new Learnt(trials(name).reading(), words.apart());
    }

    /**
     * What trials came to in earlier builds.
     *
     * @param name of the sheet for everybody, without its folder and ending
     */
    KeptTrials trials(String name) {
        return trials.computeIfAbsent(name, unseen -> new KeptTrials(kept, trialsOf(name)));
    }

    private Optional<Key> trialsOf(String name) {
        return kept.key("trials", name);
    }

    /**
     * Leaves for later builds what trials came to, and keeps that of sheets for which nothing had to be set.
     *
     * @param paths of all sheets
     */
    void leaveTrials(Collection<String> paths) {
        trials.values().forEach(KeptTrials::leave);
        paths.stream().filter(path -> path.startsWith(FOR_ALL)).forEach(path ->
                trialsOf(path.substring(FOR_ALL.length()).replace(".pdf", "")).ifPresent(kept::use));
    }

    Press press() {
        return press;
    }

    /**
     * What is to be known of an order; its characters join those that the type is cut to.
     *
     * @param set sets it, should it not be known
     */
    Look look(SheetOrder order, Supplier<Setting.Set> set) {
        Optional<Key> key = kept.key("look", order.setting(), order.words());
        Look look = kept.value(key, Look.class, () -> {
            PrintJob job = order.job(set.get());
            key.ifPresent(one -> requireNamed(job, one));
            return Look.at(new Setting.Set(job.guide(), job.sheets().sheets()), job.characters());
        });
        characters.addAll(look.characters());
        return look;
    }

    /** How something would be set that may never be printed. */
    Look trial(Setting setting, Learnt learnt) {
        return kept.value(kept.key("trial", setting), Look.class,
                () -> Look.at(setting.set(press, learnt), Set.of()));
    }

    /** A sheet that shows what its manuscript does not name would be found again when that has changed. */
    private static void requireNamed(PrintJob job, Key key) {
        job.guide().panels().stream().flatMap(panel -> panel.marks().stream()).forEach(mark -> {
            if (mark instanceof Mark.Drawing drawing && !key.named().contains(drawing.figure())
                    && !PrintMeFirst.isOwn(drawing.figure())) {
                throw new IllegalStateException("figure " + drawing.figure()
                        + " is on a sheet and not in its text");
            }
        });
    }

    /**
     * What is known of the file of an order, once it was looked at.
     *
     * @param read the base that its manuscript was written of: drawings that are only named there are noted as read
     * @param fit how full its panels are, where that is not told of another copy
     * @param findings that are told with it
     */
    SheetFacts facts(String path, SheetOrder order, Look look, ContentBase read, List<FitRow> fit,
            List<Finding> findings) {
        Optional<Key> key = kept.key("order", order);
        key.ifPresent(one -> one.named().forEach(read.figures()::containsKey));
        return new SheetFacts(path, key.map(Key::hash), look.letters(), fit, findings);
    }

    /** Characters of a sheet that is known already join those that the type is cut to. */
    void spell(String letters) {
        letters.codePoints().forEach(characters::add);
    }

    /**
     * The file of an order. Every order of the publication has been looked at before.
     *
     * @param hash of the order
     * @param job sets it, should its file not be known
     * @param path in the build; a file that the last build made of the same order stays
     */
    void print(Optional<String> hash, Supplier<PrintJob> job, String path, OutputFolder folder) throws IOException {
        Optional<Key> key = hash.flatMap(order -> kept.key("sheet", order, cut()));
        if (key.isPresent() && folder.keep(path, key.get().hash())) {
            kept.use(key.get());
            return;
        }
        folder.write(path, kept.bytes(key, () -> {
            freeze();
            return press.print(job.get());
        }), key.map(Key::hash));
    }

    /** The characters of the whole publication: the type on every sheet is cut to them. */
    private synchronized String cut() {
        if (cut.isEmpty()) {
            StringBuilder letters = new StringBuilder();
            characters.forEach(letters::appendCodePoint);
            cut = Optional.of(letters.toString());
        }
        return cut.get();
    }

    private synchronized void freeze() {
        if (!frozen) {
            press.freeze(new TreeSet<>(characters));
            frozen = true;
        }
    }
}
