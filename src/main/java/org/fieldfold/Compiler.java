package org.fieldfold;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fieldfold.check.Rulebook;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.content.Draft;
import org.fieldfold.content.FewFindings;
import org.fieldfold.content.FormRule;
import org.fieldfold.content.InputFile;
import org.fieldfold.content.LoadedBase;
import org.fieldfold.content.Nearest;
import org.fieldfold.edition.Comparison;
import org.fieldfold.edition.EarlierTexts;
import org.fieldfold.edition.Snapshot;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.kept.Kept;
import org.fieldfold.manuscript.News;
import org.fieldfold.output.CutOff;
import org.fieldfold.output.Manifest;
import org.fieldfold.output.OutputFile;
import org.fieldfold.output.OutputFolder;
import org.fieldfold.report.FileHashes;
import org.fieldfold.report.FitRow;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Severity;

/** The whole of it: read, check, write, set, print, publish. */
public final class Compiler {
    /** Of Fieldfold itself; stands in every manifest. */
    public static final String VERSION = "0.1.0";

    /** What only shows when a guide is set on its panels. */
    private static final List<String> FOUND_WHILE_SETTING = List.of("does-not-fit", "figure-unprintable",
            "glyph-missing", "word-too-wide");

    /** What only shows when pages are written. */
    private static final List<String> FOUND_WHILE_WRITING = List.of("handbook-too-large");

    /** What is found beside an edition that was issued. */
    private static final List<String> FOUND_IN_LEDGERS = List.of("carried-over-changed",
            "issued-bytes-differ", "issued-facts-differ", "ledger-altered");

    private static final Pattern LEDGER = Pattern.compile("/issued/([0-9]{4})\\.json$");

    private Compiler() {
    }

    /**
     * What is asked for.
     *
     * @param asOf what staleness is measured against; empty for the edition's planned issue date
     * @param proof whether to build although errors stand, with PROOF on every page
     * @param anew whether to make every file, instead of taking those that an earlier build made of the same
     *     things
     */
    public record Request(Path content, Path out, Optional<LocalDate> asOf, boolean proof, boolean anew) {
        /** Makes every file. */
        public Request(Path content, Path out, Optional<LocalDate> asOf, boolean proof) {
            this(content, out, asOf, proof, true);
        }

        /** Beside the builds, what they made and the next may take; may be deleted at any time. */
        Path kept() {
            return out.resolve(".kept");
        }
    }

    /**
     * A content base that was read and judged. The base is empty when its edition could not be read.
     *
     * @param ledgers of the editions that were issued
     */
    public record Checked(Optional<ContentBase> base, List<Finding> findings, List<InputFile> inputs,
            Ledgers ledgers) {
        /** The files that were read or are spoken of, from the content base's parent on. */
        public List<String> paths() {
            return Stream.concat(inputs.stream().map(InputFile::path), findings.stream()
                    .map(finding -> finding.span().file().path())).distinct().toList();
        }
    }

    /**
     * What came of a build.
     *
     * @param folder where it is; empty when errors stood and nothing was built
     * @param whereToLook lines that say where to begin
     * @param fit how every panel fits; empty when no guide was set
     * @param unchanged whether there was nothing to do, because nothing has changed since the last build
     */
    public record Built(Optional<Path> folder, List<OutputFile> outputs, List<Finding> findings,
            List<FitRow> fit, List<String> whereToLook, Work work, boolean unchanged) {
        public int files() {
            return outputs.size();
        }
    }

    /**
     * What a build did, of those files that may be kept.
     *
     * @param made files that were made
     * @param taken files that an earlier build had made of the same things
     */
    public record Work(int made, int taken) {
    }

    /** Reads a content base and puts every rule to it. */
    public static Checked check(Path content, Optional<LocalDate> asOf) throws IOException {
        return judge(BaseLoader.load(content), content, asOf, Judging.ANEW);
    }

    /**
     * The same, in less time where something was built before.
     *
     * @param out where builds lie; what they kept of this base is taken where it still holds, and brought up to
     *     date. Nothing is written where they kept nothing
     */
    public static Checked check(Path content, Optional<LocalDate> asOf, Path out) throws IOException {
        Kept earlier = EarlierBuilds.beside(out);
        return judge(EarlierBuilds.read(content, earlier, new FileHashes()), content, asOf,
                EarlierBuilds.judging(content, earlier));
    }

    /** Holds a base that was read from a folder to every rule and to what was issued. */
    static Checked judge(LoadedBase loaded, Path content, Optional<LocalDate> asOf, Judging judging)
            throws IOException {
        List<Finding> findings = new ArrayList<>(loaded.findings());
        loaded.base().ifPresent(base -> findings.addAll(
                judging.rules(loaded, base, asOf.orElse(base.edition().value().issued()))));
        loaded.base().ifPresent(base -> findings.addAll(Languages.findings(base)));
        Ledgers ledgers = judging.ledgers(content);
        findings.addAll(ledgers.findings());
        loaded.base().ifPresent(base -> {
            findings.addAll(Reissue.facts(base, ledgers, () -> judging.facts(loaded, base)));
            findings.addAll(CarriedOver.findings(base, ledgers, () -> judging.facts(loaded, base)));
        });
        Collections.sort(findings);
        return new Checked(loaded.base(), List.copyOf(FewFindings.ofAll(findings)), loaded.inputs(), ledgers);
    }

    /** Checks a content base and builds everything from it, or nothing. */
    public static Built compile(Request request, Consumer<String> progress) throws IOException {
        progress.accept("reading " + request.content());
        CutOff.putBack(request.out());
        Kept earlier = EarlierBuilds.of(request);
        Optional<LastBuild> last = LastBuild.of(request, earlier);
        Optional<Built> standing = last.flatMap(LastBuild::built);
        FileHashes hashes = last.map(LastBuild::hashes).orElseGet(FileHashes::new);
        return standing.isPresent() ? standing.get() : compile(request, judge(
                EarlierBuilds.read(request.content(), earlier, hashes), request.content(), request.asOf(),
                EarlierBuilds.judging(request.content(), earlier)), earlier, last, progress);
    }

    /** The same, of a base that was read already; takes nothing from earlier builds. */
    static Built compile(Request request, Checked checked, Consumer<String> progress) throws IOException {
        return compile(request, checked, Kept.nothing(), Optional.empty(), progress);
    }

    private static Built compile(Request request, Checked checked, Kept earlier, Optional<LastBuild> before,
            Consumer<String> progress) throws IOException {
        if (checked.base().isEmpty() || !request.proof() && hasError(checked.findings())
                || !Languages.findings(checked.base().get()).isEmpty()) {
            return refused(checked.findings(), List.of());
        }
        ContentBase base = checked.base().get();
        Edition edition = base.edition().value();

        progress.accept("setting guides");
        Optional<Comparison> changes = checked.ledgers().before(edition.year()).map(last ->
                Comparison.of("edition " + last.year(), last.facts(), "edition " + edition.year(),
                        Snapshot.of(base)));
        News news = News.of(changes);
        Tongues tongues = new Tongues(base);
        Kept kept = checked.ledgers().of(edition.year()).isPresent() ? Kept.nothing()
                : earlier.naming(PrintRoom.hashes(base), PrintRoom.SHARED);
        PrintRoom room = PrintRoom.of(base, kept);
        List<Finding> unprintable = FigureProof.of(base, room.press(), kept);
        if (!unprintable.isEmpty()) {
            return refused(sorted(checked.findings(), unprintable), List.of());
        }
        SetGuides guides = SetGuides.of(tongues, news, request.proof(), room,
                new KeptSheets(request.content(), checked.inputs(), kept));
        List<Finding> findings = sorted(checked.findings(), guides.findings());
        if (!request.proof() && hasError(findings)) {
            kept.save();
            return refused(findings, guides.fit());
        }

        try (OutputFolder folder = OutputFolder.open(request.out(), String.valueOf(edition.year()))) {
            progress.accept("printing guides and writing the handbook");
            LastBuild.published(kept, edition.year()).ifPresent(folder::follow);
            Pages pages = Pages.beside(guides, folder, () -> Pages.of(tongues, checked.ledgers(), changes, findings,
                    guides.fit(), request.proof(), EarlierPages.of(request.content(), kept, checked.inputs()),
                    folder));
            pages.write(folder);
            List<Finding> rewritten = Reissue.bytes(base, checked.ledgers(), folder.files(), request.proof());
            if (!rewritten.isEmpty()) {
                return refused(sorted(pages.findings(), rewritten), guides.fit());
            }
            Manifest manifest = new Manifest(edition.year(), VERSION, request.proof(),
                    checked.inputs().stream().filter(file -> !isLaterLedger(file, edition.year()))
                            .map(Compiler::input).toList(), folder.files());
            folder.write("manifest.json", manifest.json().getBytes(StandardCharsets.UTF_8));
            folder.publish();
            Built built = new Built(Optional.of(folder.target()), folder.files(), pages.findings(),
                    guides.fit(), whereToLook(folder.target(), edition.languages()),
                    new Work(kept.made(), kept.taken() + folder.kept()), false);
            LastBuild.published(kept, edition.year(), folder);
            before.ifPresent(files -> files.say(kept, checked.inputs(), edition.year(), built,
                    edition.languages()));
            kept.tidy();
            return built;
        }
    }

    /** All rules by name, each with what it asks in one sentence. */
    public static SortedMap<String, String> rules() {
        SortedMap<String, String> rules = new TreeMap<>();
        Rulebook.rules().forEach(rule -> rules.put(rule.id(), Rulebook.summary(rule.id()).orElse("")));
        Stream.of(FormRule.values()).forEach(rule -> rules.put(rule.id(), sentence(rule.summary())));
        Stream.of(FOUND_WHILE_SETTING, FOUND_WHILE_WRITING, FOUND_IN_LEDGERS).flatMap(List::stream)
                .forEach(id -> rules.put(id, Rulebook.summary(id).orElse("")));
        return rules;
    }

    private static List<Finding> sorted(List<Finding> some, List<Finding> others) {
        return Stream.concat(some.stream(), others.stream()).sorted().toList();
    }

    private static String sentence(String summary) {
        return summary.substring(0, 1).toUpperCase(Locale.ROOT) + summary.substring(1) + ".";
    }

    /** The rule whose name is most like {@code name}, when one is near. */
    public static Optional<String> nearestRule(String name) {
        return Nearest.to(name, rules().keySet());
    }

    /** A new file of a kind; see {@link Draft}. */
    public static Draft draft(String kind, String id, boolean brief) {
        return Draft.of(kind, id, brief);
    }

    /** The working files of a translator; see {@link Draft#translations}. */
    public static List<Draft> translations(Path content, String language, Optional<String> file)
            throws IOException {
        ContentBase base = BaseLoader.load(content).base().orElseThrow(() -> new IllegalArgumentException(
                "expected a content base whose edition.yaml can be read; 'fieldfold check' says more"));
        return Draft.translations(base, language, file,
                EarlierTexts.of(Ledgers.in(content).byYear().values())::of);
    }

    /** The page of a rule, or empty when there is no such rule. */
    public static Optional<String> explain(String rule) {
        return Rulebook.explain(rule);
    }

    private static Built refused(List<Finding> findings, List<FitRow> fit) {
        return new Built(Optional.empty(), List.of(), List.copyOf(findings), fit, List.of(),
                new Work(0, 0), false);
    }

    private static boolean hasError(List<Finding> findings) {
        return findings.stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
    }

    /** An edition is not made of its own ledger, nor of those of later years. */
    private static boolean isLaterLedger(InputFile file, int year) {
        Matcher ledger = LEDGER.matcher(file.path());
        return ledger.find() && Integer.parseInt(ledger.group(1)) >= year;
    }

    private static OutputFile input(InputFile file) {
        return new OutputFile(file.path(), file.size(), file.sha256());
    }

    static List<String> whereToLook(Path folder, List<String> languages) {
        return Stream.of(Stream.of("print and fold   " + folder.resolve("foldouts")),
                languages.stream().flatMap(language -> Stream.of(
                        "open on a phone  " + folder.resolve("handbook." + language + ".html"),
                        "on an iPhone     " + folder.resolve("handbook." + language + ".epub"))),
                Stream.of("review           " + folder.resolve("review/index.html")))
                .flatMap(lines -> lines).toList();
    }
}
