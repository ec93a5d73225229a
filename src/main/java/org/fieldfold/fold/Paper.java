package org.fieldfold.fold;

import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * A sheet that an office copier takes, upright. ISO 216 sizes are whole millimetres, the North American ones
 * (ANSI/ASME Y14.1 A and B, and legal) whole inches or halves of them.
 */
public enum Paper {
    LETTER("letter", 8.5, 11, 25.4),
    LEGAL("legal", 8.5, 14, 25.4),
    TABLOID("tabloid", 11, 17, 25.4),
    A4("a4", 210, 297, 1),
    A3("a3", 297, 420, 1);

    private final String id;
    private final double width;
    private final double height;
    private final double unitMm;

    Paper(String id, double width, double height, double unitMm) {
        this.id = id;
        this.width = width;
        this.height = height;
        this.unitMm = unitMm;
    }

    /** The paper with this id, such as {@code a4}; an unknown one is an {@code IllegalArgumentException}. */
    public static Paper named(String id) {
        return Arrays.stream(values()).filter(p -> p.id.equals(id)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("expected a paper ("
                        + Arrays.stream(values()).map(Paper::id).collect(Collectors.joining(", "))
                        + "), found '" + id + "'"));
    }

    public String id() {
        return id;
    }

    /** Width in points, upright. */
    public double width() {
        return Lengths.points(width * unitMm);
    }

    /** Height in points, upright. */
    public double height() {
        return Lengths.points(height * unitMm);
    }

    public double widthMm() {
        return width * unitMm;
    }

    public double heightMm() {
        return height * unitMm;
    }

    /** Whether the paper is cut and folded in inches. */
    public boolean inInches() {
        return unitMm != 1;
    }

    /**
     * By how many points a panel that is tucked into a fold is narrower than the one around it: 1/16 inch, or
     * 1.5 mm (common practice: 1/32 to 1/8 inch, by the weight of the paper).
     */
    double tuck() {
        return inInches() ? 72.0 / 16 : Lengths.points(1.5);
    }

    /**
     * The step in points to which outer panels are rounded up where others are tucked in: 1/32 inch, or 1 mm.
     */
    double step() {
        return inInches() ? 72.0 / 32 : Lengths.points(1);
    }
}
