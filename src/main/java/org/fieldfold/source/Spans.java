package org.fieldfold.source;

import java.util.Map;

/**
 * Where each fact of one document stands: from a path of keys and list positions, joined by {@code /} as in
 * {@code thresholds/0/value}, to its span. The facts themselves carry no positions, so that moving a line is
 * no change.
 */
public record Spans(SourceFile file, Map<String, Span> byPath) {
    public Spans {
        byPath = Map.copyOf(byPath);
    }

    /**
     * The span of the fact at {@code path}; where that fact is missing, the span of the nearest thing around
     * it.
     *
     * @param path keys and 0-based list positions, outermost first
     */
    public Span at(Object... path) {
        StringBuilder joined = new StringBuilder();
        for (Object step : path) {
            joined.append(joined.length() == 0 ? "" : "/").append(step);
        }
        String key = joined.toString();
        while (!byPath.containsKey(key)) {
            int cut = key.lastIndexOf('/');
            if (cut < 0) {
                return byPath.getOrDefault("", Span.startOf(file));
            }
            key = key.substring(0, cut);
        }
        return byPath.get(key);
    }

    /** The spans below {@code path}, seen from there: for a list of records that share one file. */
    public Spans below(Object... path) {
        StringBuilder prefix = new StringBuilder();
        for (Object step : path) {
            prefix.append(step).append('/');
        }
        String from = prefix.toString();
        Map<String, Span> inner = new java.util.HashMap<>();
        byPath.forEach((key, span) -> {
            if (key.startsWith(from)) {
                inner.put(key.substring(from.length()), span);
            }
        });
        inner.put("", at(path));
        return new Spans(file, inner);
    }
}
