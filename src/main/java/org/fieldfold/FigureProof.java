package org.fieldfold;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Figure;
import org.fieldfold.kept.Kept;
import org.fieldfold.pdf.Press;
import org.fieldfold.source.Finding;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;

/** Every figure of a base is tried on the press before a sheet is set, whether or not a sheet shows it. */
final class FigureProof {
    private record Problem(String figure, String what) {
    }

    private record Problems(List<Problem> all) {
    }

    private FigureProof() {
    }

    /**
     * What cannot be printed, at its file.
     *
     * @param press holds the figures
     * @param kept may know it of the same figures
     */
    static List<Finding> of(ContentBase base, Press press, Kept kept) {
        Map<String, String> hashes = new TreeMap<>(PrintRoom.hashes(base));
        List<String> figures = hashes.entrySet().stream().map(each -> each.getKey() + " " + each.getValue()).toList();
        Problems problems = kept.value(kept.key("figures", figures), Problems.class, () -> new Problems(
                press.problems().entrySet().stream().map(each -> new Problem(each.getKey(), each.getValue()))
                        .toList()));
        return problems.all().stream().filter(problem -> base.figures().containsKey(problem.figure()))
                .map(problem -> finding(base.figures().get(problem.figure()).value(), problem.what())).sorted()
                .toList();
    }

    private static Finding finding(Figure figure, String what) {
        String why = what.replaceFirst("^figure " + figure.id() + ": ", "");
        SourceFile file = new SourceFile(figure.file(), figure.drawn()
                ? new String(figure.bytes(), StandardCharsets.UTF_8) : "");
        return Finding.error(Span.startOf(file), "figure-unprintable", why.contains("expected ") ? why
                : "expected a figure that can be printed, found one that breaks the press: " + why,
                figure.drawn() ? "take out of the drawing what is not needed, and look whether all of it lies in the "
                        + "viewBox" : "save the picture again");
    }
}
