package org.fieldfold.source;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * All findings as people read them in a window, whose end they see first: notes, then warnings, then errors, and at the
 * end how many there are and where the errors stand. Many of one kind in one file, as in a new draft, are told
 * together.
 */
public final class FindingText {
    /** From so many on, findings of one file, rule and hint are told together. */
    private static final int MANY = 4;

    /** What is told together when it is told often. */
    private record Kind(Severity severity, String path, String rule, String hint) {
    }

    private final FindingPrinter printer;

    /** @param colour whether to mark severities with terminal colours; only for a terminal */
    public FindingText(boolean colour) {
        this.printer = new FindingPrinter(colour);
    }

    /** All of them, the gravest last, and the count below. */
    public String print(List<Finding> findings) {
        return told(findings) + places(findings) + FindingPrinter.summary(findings) + "\n";
    }

    /** The same without the count. */
    public String told(List<Finding> findings) {
        Map<Kind, List<Finding>> kinds = new LinkedHashMap<>();
        for (Finding finding : findings) {
            kinds.computeIfAbsent(kind(finding), none -> new ArrayList<>()).add(finding);
        }
        StringBuilder out = new StringBuilder();
        Set<Kind> together = new HashSet<>();
        findings.stream().sorted(Comparator.comparing(Finding::severity).reversed()).forEach(finding -> {
            List<Finding> alike = kinds.get(kind(finding));
            if (alike.size() < MANY) {
                out.append(printer.print(finding));
            } else if (together.add(kind(finding))) {
                out.append(printer.together(alike));
            }
        });
        return out.toString();
    }

    private static Kind kind(Finding finding) {
        return new Kind(finding.severity(), finding.span().file().path(), finding.rule(), finding.hint());
    }

    /** Where errors stand, when it is more than one file. */
    public static String places(List<Finding> findings) {
        Map<String, Integer> errors = new TreeMap<>();
        findings.stream().filter(finding -> finding.severity() == Severity.ERROR)
                .forEach(finding -> errors.merge(finding.span().file().path(), 1, Integer::sum));
        if (errors.size() < 2) {
            return "";
        }
        StringBuilder out = new StringBuilder("errors stand in\n");
        errors.forEach((path, count) -> out.append("  ").append(path).append("  ").append(count)
                .append('\n'));
        return out.toString();
    }
}
