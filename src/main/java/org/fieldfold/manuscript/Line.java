package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import org.fieldfold.prose.Run;

/** Builds one line of runs, so that sentences read in the code as they read on paper. */
final class Line {
    private final List<Run> runs = new ArrayList<>();

    static Line of() {
        return new Line();
    }

    Line strong(String text) {
        return add(Run.strong(text));
    }

    Line plain(String text) {
        return add(Run.plain(text));
    }

    Line name(String text) {
        return add(Run.name(text));
    }

    Line add(Run run) {
        if (!run.text().isEmpty()) {
            runs.add(run);
        }
        return this;
    }

    Line add(List<Run> more) {
        more.forEach(this::add);
        return this;
    }

    /** Adds {@code more} as a further sentence: behind a space, if anything stands before it. */
    Line sentence(List<Run> more) {
        if (!runs.isEmpty() && !more.isEmpty()) {
            plain(" ");
        }
        return add(more);
    }

    boolean isEmpty() {
        return runs.isEmpty();
    }

    List<Run> runs() {
        return List.copyOf(runs);
    }
}
