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
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.fieldfold.check.Rulebook;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.content.Draft;
import org.fieldfold.content.FormRule;
import org.fieldfold.content.InputFile;
import org.fieldfold.content.LoadedBase;
import org.fieldfold.content.Nearest;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.output.Manifest;
import org.fieldfold.output.OutputFile;
import org.fieldfold.output.OutputFolder;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Severity;

/** The whole of it: read, check, write, set, print, publish. */
public final class Compiler {
    /** Of Fieldfold itself; stands in every manifest. */
    public static final String VERSION = "0.1.0";

    /** What only shows when a guide is set on its panels. */
    private static final List<String> FOUND_WHILE_SETTING = List.of("does-not-fit", "glyph-missing",
            "word-too-wide");

    private Compiler() {
    }

    /**
     * What is asked for.
     *
     * @param asOf what staleness is measured against; empty for the edition's planned issue date
     * @param proof whether to build although errors stand, with PROOF on every page
     */
    public record Request(Path content, Path out, Optional<LocalDate> asOf, boolean proof) {
    }

    /** A content base that was read and judged. The base is empty when its edition could not be read. */
    public record Checked(Optional<ContentBase> base, List<Finding> findings, List<InputFile> inputs) {
    }

    /**
     * What came of a build.
     *
     * @param folder where it is; empty when errors stood and nothing was built
     * @param whereToLook lines that say where to begin
     */
    public record Built(Optional<Path> folder, int files, List<Finding> findings, List<String> whereToLook) {
    }

    /** Reads a content base and puts every rule to it. */
    public static Checked check(Path content, Optional<LocalDate> asOf) throws IOException {
        LoadedBase loaded = BaseLoader.load(content);
        List<Finding> findings = new ArrayList<>(loaded.findings());
        loaded.base().ifPresent(base -> findings.addAll(
                Rulebook.check(base, asOf.orElse(base.edition().value().issued()))));
        Collections.sort(findings);
        return new Checked(loaded.base(), List.copyOf(findings), loaded.inputs());
    }

    /** Checks a content base and builds everything from it, or nothing. */
    public static Built compile(Request request, Consumer<String> progress) throws IOException {
        progress.accept("reading " + request.content());
        Checked checked = check(request.content(), request.asOf());
        if (checked.base().isEmpty() || !request.proof() && hasError(checked.findings())) {
            return refused(checked.findings());
        }
        ContentBase base = checked.base().get();
        Edition edition = base.edition().value();

        progress.accept("setting guides");
        SetGuides guides = SetGuides.of(base, request.proof());
        List<Finding> findings = sorted(checked.findings(), guides.findings());
        if (!request.proof() && hasError(findings)) {
            return refused(findings);
        }

        try (OutputFolder folder = OutputFolder.open(request.out(), String.valueOf(edition.year()))) {
            progress.accept("printing guides and writing the handbook");
            CompletableFuture<Pages> pages = CompletableFuture.supplyAsync(
                    () -> Pages.of(base, findings, guides.fit(), request.proof()));
            guides.print(folder);
            pages.join().write(folder);
            Manifest manifest = new Manifest(edition.year(), VERSION, request.proof(),
                    checked.inputs().stream().map(Compiler::input).toList(), folder.files());
            folder.write("manifest.json", manifest.json().getBytes(StandardCharsets.UTF_8));
            folder.publish();
            return new Built(Optional.of(folder.target()), folder.files().size(), List.copyOf(findings),
                    whereToLook(folder, edition.languages()));
        }
    }

    /** All rules by name, each with what it asks in one sentence. */
    public static SortedMap<String, String> rules() {
        SortedMap<String, String> rules = new TreeMap<>();
        Rulebook.rules().forEach(rule -> rules.put(rule.id(), Rulebook.summary(rule.id()).orElse("")));
        Stream.of(FormRule.values()).forEach(rule -> rules.put(rule.id(), sentence(rule.summary())));
        FOUND_WHILE_SETTING.forEach(id -> rules.put(id, Rulebook.summary(id).orElse("")));
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
    public static Draft draft(String kind, String id) {
        return Draft.of(kind, id);
    }

    /** The working files of a translator; see {@link Draft#translations}. */
    public static List<Draft> translations(Path content, String language, Optional<String> file)
            throws IOException {
        ContentBase base = BaseLoader.load(content).base().orElseThrow(() -> new IllegalArgumentException(
                "expected a content base whose edition.yaml can be read; 'fieldfold check' says more"));
        return Draft.translations(base, language, file);
    }

    /** The page of a rule, or empty when there is no such rule. */
    public static Optional<String> explain(String rule) {
        return Rulebook.explain(rule);
    }

    private static Built refused(List<Finding> findings) {
        return new Built(Optional.empty(), 0, List.copyOf(findings), List.of());
    }

    private static boolean hasError(List<Finding> findings) {
        return findings.stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
    }

    private static OutputFile input(InputFile file) {
        return new OutputFile(file.path(), file.size(), file.sha256());
    }

    private static List<String> whereToLook(OutputFolder folder, List<String> languages) {
        return Stream.of(Stream.of("print and fold   " + folder.target().resolve("foldouts")),
                languages.stream().flatMap(language -> Stream.of(
                        "open on a phone  " + folder.target().resolve("handbook." + language + ".html"),
                        "on an iPhone     " + folder.target().resolve("handbook." + language + ".epub"))),
                Stream.of("review           " + folder.target().resolve("review/index.html")))
                .flatMap(lines -> lines).toList();
    }
}
