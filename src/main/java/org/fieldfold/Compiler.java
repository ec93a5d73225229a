package org.fieldfold;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fieldfold.check.Rule;
import org.fieldfold.check.Rulebook;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.content.Draft;
import org.fieldfold.content.FormRule;
import org.fieldfold.content.InputFile;
import org.fieldfold.content.LoadedBase;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.source.Finding;

/** The whole of it: read, check, write, set, print, publish. */
public final class Compiler {
    private Compiler() {
    }

    /** A content base that was read and judged. The base is empty when its edition could not be read. */
    public record Checked(Optional<ContentBase> base, List<Finding> findings, List<InputFile> inputs) {
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

    /** The names of all rules, sorted. */
    public static List<String> ruleNames() {
        return Stream.concat(Rulebook.rules().stream().map(Rule::id),
                Stream.of(FormRule.values()).map(FormRule::id)).sorted().toList();
    }

    /** A new file of a kind; see {@link Draft}. */
    public static Draft draft(String kind, String id) {
        return Draft.of(kind, id);
    }

    /** The page of a rule, or empty when there is no such rule. */
    public static Optional<String> explain(String rule) {
        return Rulebook.explain(rule);
    }
}
