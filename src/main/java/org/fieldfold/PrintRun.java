package org.fieldfold;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.Placed;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.FoldException;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.PanelSlot;
import org.fieldfold.fold.Paper;
import org.fieldfold.kept.Kept;
import org.fieldfold.manuscript.GuideWriter;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.OfficePanel;
import org.fieldfold.pdf.Press;
import org.fieldfold.pdf.PrintJob;
import org.fieldfold.pdf.SheetWords;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Span;
import org.fieldfold.typeset.Learnt;
import org.fieldfold.typeset.SetGuide;
import org.fieldfold.typeset.Setter;

/**
 * One guide in one language and one choice of units on one paper. Its copies differ in whom they tell the reader
 * to call and in how the sheet is turned; all the rest is set once and shared by them. Several threads may use it.
 */
final class PrintRun {
    private final ContentBase base;
    private final Placed<Guide> guide;
    private final String language;
    private final String paper;
    private final GuideWriter writer;
    private final Manuscript generic;
    private final SheetWords words;
    private final Press press;
    private final Setting.Manner manner;
    private final Setter setter;
    private final Supplier<Learnt> known;
    /** One object, so that it is hashed once. */
    private final Setting forAll;
    /** The one for everybody, once it was set. */
    private Optional<Setting.Set> copy = Optional.empty();
    private final ChangedCopies changed;
    private final Map<FlipEdge, Imposition> sheets;

    /**
     * @param base in the language of the run
     * @param writer in that language; it remembers what the guides of a base have in common
     */
    private PrintRun(ContentBase base, Placed<Guide> guide, String language, String paper,
            GuideWriter writer, boolean proof, PrintRoom room, Map<FlipEdge, Imposition> sheets) {
        this.base = base;
        this.guide = guide;
        this.language = language;
        this.paper = paper;
        this.writer = writer;
        this.generic = writer.generic(guide, proof);
        this.words = SheetWords.in(language);
        this.press = room.press();
        this.sheets = sheets;
        this.manner = new Setting.Manner.Panels(slots(), Optional.empty());
        this.known = () -> room.known(name());
        this.changed = new ChangedCopies(room, guide, this::manuscript, manner, known);
        this.forAll = new Setting(generic, manner);
        this.setter = forAll.setter(press, room.learnt(name()));
    }

    /** The same run, as somebody reads its base who has to know what was read. */
    private PrintRun(PrintRun other, ContentBase base, GuideWriter writer, PrintRoom room) {
        this.base = base;
        this.guide = base.guides().get(other.guide());
        this.language = other.language;
        this.paper = other.paper;
        this.writer = writer;
        this.generic = other.generic;
        this.words = other.words;
        this.press = other.press;
        this.sheets = other.sheets;
        this.manner = other.manner;
        this.known = other.known;
        this.changed = new ChangedCopies(room, guide, this::manuscript, manner, known);
        this.forAll = other.forAll;
        this.setter = other.setter;
    }

    /** The same run of the same base, of which is noted what its copies for offices read. */
    PrintRun reading(ContentBase same, GuideWriter writer, PrintRoom room) {
        return new PrintRun(this, same, writer, room);
    }

    /** A proof is built although a finding stands at a sheet: what cannot be folded is left out of it. */
    static Optional<PrintRun> of(ContentBase base, Placed<Guide> guide, String language, String paper,
            GuideWriter writer, boolean proof, Press press) {
        return of(base, guide, language, paper, writer, proof, new PrintRoom(press, Kept.nothing()));
    }

    /** The same; what an earlier build found out of its copies is not found out again. */
    static Optional<PrintRun> of(ContentBase base, Placed<Guide> guide, String language, String paper,
            GuideWriter writer, boolean proof, PrintRoom room) {
        try {
            Map<FlipEdge, Imposition> sheets = new EnumMap<>(FlipEdge.class);
            for (FlipEdge flip : FlipEdge.values()) {
                base.scheme(guide.value().scheme()).ifPresent(scheme ->
                        sheets.put(flip, Imposition.of(scheme, Paper.named(paper), flip)));
            }
            return sheets.isEmpty() ? Optional.empty()
                    : Optional.of(new PrintRun(base, guide, language, paper, writer, proof, room,
                            sheets));
        } catch (FoldException | IllegalArgumentException unfit) {
            return Optional.empty();
        }
    }

    String guide() {
        return guide.value().id();
    }

    boolean isFor(Office office) {
        return OfficeCopies.has(office, guide.value(), language, writer.units(), paper, base.edition().value());
    }

    /** The guide as an office's copies have it. */
    Guide kept(Office office) {
        return office.keeps(guide.value());
    }

    String language() {
        return language;
    }

    /** Of its titles. */
    String ink() {
        return generic.ink();
    }

    String paper() {
        return paper;
    }

    /** Whether copies for everybody are in these units. */
    boolean isForAll() {
        return writer.units().equals(base.edition().value().units());
    }

    /** In the review; a guide in another language than the base's says so. */
    String heading() {
        return guide() + (language.equals(base.edition().value().languages().get(0)) ? "" : "." + language);
    }

    /** The panel of the copies for everybody. */
    OfficePanel generic() {
        return OfficePanel.generic(base.edition());
    }

    /** The panel of an office, in the language of this run. */
    OfficePanel office(String id) {
        return OfficePanel.of(base.offices().get(id));
    }

    /** The sheet of a copy, for a printer that turns it so. */
    Imposition sheet(FlipEdge flip) {
        return sheets.get(flip);
    }

    /** Name of a copy's file, without its ending. */
    String name() {
        return guide() + "." + language + "." + paper;
    }

    /** The panels of a copy; the same however the sheet is turned. */
    SetGuide set(OfficePanel office) {
        Setting.Set set = set(office, setting(office));
        return changes(office) ? changed.saying(moved(office), set.guide()) : set.guide();
    }

    /** Whether an office's copies differ by more than whom to call. */
    boolean changes(OfficePanel office) {
        return office.changes(guide.value());
    }

    /** What its panels are set from. */
    Setting setting(OfficePanel office) {
        return office.office().isEmpty() ? forAll
                : new Setting(manuscript(changes(office) ? changed.placed(office) : office), manner);
    }

    /** The same as {@link Setting#set}, what the copies have in common being set once. */
    Setting.Set set(OfficePanel office, Setting setting) {
        return setting == forAll ? setForAll()
                : changes(office) ? setting.set(press, known.get()) : setting.set(press, setter);
    }

    /** Once for what is to be said of it and for both ways of turning the sheet. */
    private synchronized Setting.Set setForAll() {
        if (copy.isEmpty()) {
            copy = Optional.of(forAll.set(press, setter));
        }
        return copy.get();
    }

    /** What is to be said of an office's notes that have no room where they belong. */
    List<Finding> moved(OfficePanel office) {
        return changes(office) ? changed.moved(office) : List.of();
    }

    /** The file of a copy. */
    SheetOrder order(OfficePanel office, FlipEdge flip) {
        return order(setting(office), flip);
    }

    private SheetOrder order(Setting setting, FlipEdge flip) {
        return SheetOrder.of(setting, sheets.get(flip), base.edition().value(), PrintJob.Surround.FOLDS,
                words);
    }

    /** What is printed of a copy; its panels are set anew, which costs little once the run is set. */
    PrintJob job(OfficePanel office, FlipEdge flip) {
        SheetOrder order = order(office, flip);
        return order.job(set(office, order.setting()));
    }

    /** Where its panels lie, in reading order. */
    List<PanelSlot> slots() {
        return sheets.get(FlipEdge.SHORT).slots();
    }

    /** What the generic copy does not say as well is the office's own, and said at its own file. */
    List<Finding> findings(OfficePanel office, SetGuide set, List<Finding> generic) {
        return findings(office, set.findings(), generic);
    }

    List<Finding> findings(OfficePanel office, List<Finding> found, List<Finding> generic) {
        return found.stream().filter(finding -> !generic.contains(finding))
                .map(finding -> at(office.origin(), finding)).toList();
    }

    private static Finding at(Span origin, Finding finding) {
        return finding.span().file().equals(origin.file()) ? finding
                : new Finding(finding.severity(), origin, finding.rule(), finding.message(), finding.hint());
    }

    PrintJob job(SetGuide set, FlipEdge flip) {
        return order(new Setting(generic, manner), flip).job(new Setting.Set(set, 1));
    }

    Manuscript manuscript(OfficePanel office) {
        return writer.rewrite(generic, guide, office);
    }
}
