package org.fieldfold.check;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Release;
import org.fieldfold.source.Finding;

/** It is known why a figure may be printed and given on. */
final class FigureWithoutRelease implements Rule {
    @Override
    public String id() {
        return "figure-without-release";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (Placed<Figure> placed : base.figures().values()) {
            Optional<Release> release = placed.value().note().release();
            if (release.isEmpty()) {
                found.accept(Finding.info(placed.at("caption"), id(), "expected a release for figure '"
                        + placed.value().id() + "', found none", "add 'release: own-work', 'licensed' or "
                        + "'public-domain'; 'asked' while its maker has not answered"));
            } else if (!release.get().given()) {
                found.accept(Finding.warning(placed.at("release"), id(), "expected figure '"
                        + placed.value().id() + "' to be released before it is printed, found that its maker "
                        + "was asked and has not answered", "write down the answer, or show another figure"));
            }
        }
    }
}
