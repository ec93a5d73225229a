package org.fieldfold.check;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fieldfold.FolderCopy;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.content.LoadedBase;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.source.Finding;

/**
 * A sample of one rule: the base that all share, with the files of one folder laid over it. A line at which a
 * finding is expected ends with a comment such as {@code # error: no-caution}.
 */
record Sample(Path content) {
    static final Path RESOURCES = Path.of("src/test/resources/org/fieldfold/check");
    private static final Pattern MARK = Pattern.compile("# (error|warning|info): ([a-z0-9-]+)$");

    /** Lays the files of {@code over}, where there are any, over the base in a new folder {@code content}. */
    static Sample laid(Path over, Path into) throws IOException {
        Path content = FolderCopy.of(RESOURCES.resolve("base"), into.resolve("content"));
        FolderCopy.of(over, content);
        return new Sample(content);
    }

    /** The base, which must be free of findings of form: a sample is about substance. */
    ContentBase base() throws IOException {
        LoadedBase loaded = BaseLoader.load(content);
        if (!loaded.findings().isEmpty()) {
            throw new AssertionError("expected a sample in good form, found " + loaded.findings());
        }
        return loaded.base().orElseThrow();
    }

    /** What one rule finds, as measured against the planned issue date. */
    List<Finding> found(Rule rule) throws IOException {
        ContentBase base = base();
        List<Finding> found = new ArrayList<>();
        rule.check(base, asOf(base), found::add);
        return found;
    }

    List<Finding> foundByAll() throws IOException {
        ContentBase base = base();
        return Rulebook.check(base, asOf(base));
    }

    private static LocalDate asOf(ContentBase base) {
        return base.edition().value().issued();
    }

    /** The marked lines, each as {@code content/pests/x.yaml:7 error some-rule}, sorted. */
    List<String> marked() throws IOException {
        List<String> marked = new ArrayList<>();
        try (Stream<Path> files = Files.walk(content)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".yaml")).toList()) {
                List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
                for (int i = 0; i < lines.size(); i++) {
                    Matcher mark = MARK.matcher(lines.get(i));
                    if (mark.find()) {
                        marked.add("content/" + slashed(content.relativize(file)) + ":" + (i + 1) + " "
                                + mark.group(1) + " " + mark.group(2));
                    }
                }
            }
        }
        return marked.stream().sorted().toList();
    }

    /** Findings in the form of {@link #marked()}; a line that is found twice stands once. */
    static List<String> lines(List<Finding> findings) {
        return findings.stream().map(finding -> finding.span().file().path() + ":" + finding.span().line()
                + " " + finding.severity().word() + " " + finding.rule()).distinct().sorted().toList();
    }

    /** The names of the folders in a folder, sorted. */
    static List<String> folders(Path in) {
        try (Stream<Path> found = Files.list(in)) {
            return found.filter(Files::isDirectory).map(path -> path.getFileName().toString()).sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String slashed(Path path) {
        return path.toString().replace('\\', '/');
    }
}
