package org.fieldfold;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Placed;
import org.fieldfold.report.FitRow;
import org.fieldfold.source.Span;
import org.fieldfold.source.Spans;
import org.fieldfold.typeset.SetGuide;

/** Says of set guides how their panels fit, and names every text by the field in which it was written. */
final class FitRows {
    private final ContentBase base;
    /** Gathered for the first text that is named: mostly there is none. */
    private Optional<Map<Span, String>> fields = Optional.empty();

    /** @param base in the language of the guides */
    FitRows(ContentBase base) {
        this.base = base;
    }

    private static Map<Span, String> fields(ContentBase base) {
        Map<Span, String> fields = new HashMap<>();
        take(base.edition().spans(), fields);
        Stream.of(base.pests(), base.guides(), base.enemies(), base.practices(), base.crops(), base.offices())
                .flatMap(records -> ((Collection<? extends Placed<?>>) records.values()).stream())
                .map(Placed::spans).forEach(spans -> take(spans, fields));
        return fields;
    }

    /** Of several names for one place the shortest: that of the text, not that of its only length. */
    private static void take(Spans spans, Map<Span, String> fields) {
        spans.byPath().forEach((path, span) -> fields.merge(span, path, (one, other) ->
                one.length() != other.length() ? one.length() < other.length() ? one : other
                        : one.compareTo(other) < 0 ? one : other));
    }

    /**
     * A row for each panel.
     *
     * @param guide its name in the review
     */
    List<FitRow> of(String guide, String paper, List<SetGuide.PanelFit> panels) {
        return panels.stream().map(panel -> new FitRow(guide, paper, panel.reading(), panel.section(),
                panel.used(), panel.typeSize(), panel.leading(), panel.forms().stream().map(form ->
                        new FitRow.Form(field(form.origin()), form.brief())).toList(),
                panel.over().map(over -> new FitRow.Over(over.section(), field(over.origin()), over.origin(),
                        over.lines())))).toList();
    }

    private synchronized String field(Span origin) {
        if (fields.isEmpty()) {
            fields = Optional.of(fields(base));
        }
        return fields.get().getOrDefault(origin, "");
    }
}
