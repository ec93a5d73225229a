package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/** A photograph has at least 300 dots an inch at the largest size at which a panel places it. */
final class RasterTooCoarse implements Rule {
    @Override
    public String id() {
        return "raster-too-coarse";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (Placed<Figure> placed : base.figures().values()) {
            if (placed.value().drawn()) {
                continue;
            }
            RasterSize.of(placed.value().bytes()).ifPresent(size -> {
                double dpi = size.height() / (LARGEST_MM / MM_PER_INCH);
                if (dpi < 300) {
                    found.accept(Finding.error(placed.at("caption"), id(),
                            "expected at least 300 dots an inch at "
                            + Words.of(LARGEST_MM) + " mm, found " + (int) dpi + " (" + size.width() + " x "
                            + size.height() + " dots)", "use the original photograph, at least "
                            + (int) StrictMath.ceil(300 * LARGEST_MM / MM_PER_INCH) + " dots high"));
                }
            });
        }
    }

    /** Height of the tallest plate on a pocket panel. */
    private static final double LARGEST_MM = 34;
    private static final double MM_PER_INCH = 25.4;
}
