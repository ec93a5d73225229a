package org.fieldfold.source;

import java.util.Comparator;

/**
 * What a check has to say about one place.
 *
 * @param rule the rule's id, such as {@code threshold-without-source}
 * @param message what was expected and what was found; lower case, no full stop
 * @param hint how to mend it, or empty
 */
public record Finding(Severity severity, Span span, String rule, String message, String hint)
        implements Comparable<Finding> {
    private static final Comparator<Finding> ORDER = Comparator.comparing(Finding::span)
            .thenComparing(Finding::severity).thenComparing(Finding::rule).thenComparing(Finding::message);

    public Finding {
        if (rule.isBlank() || message.isBlank()) {
            throw new IllegalArgumentException("a finding needs a rule and a message: " + rule + ", "
                    + message);
        }
    }

    public static Finding error(Span span, String rule, String message, String hint) {
        return new Finding(Severity.ERROR, span, rule, message, hint);
    }

    public static Finding warning(Span span, String rule, String message, String hint) {
        return new Finding(Severity.WARNING, span, rule, message, hint);
    }

    public static Finding info(Span span, String rule, String message, String hint) {
        return new Finding(Severity.INFO, span, rule, message, hint);
    }

    /** By file, then position, then severity. */
    @Override
    public int compareTo(Finding other) {
        return ORDER.compare(this, other);
    }
}
