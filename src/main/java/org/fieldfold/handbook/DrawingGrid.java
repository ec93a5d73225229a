package org.fieldfold.handbook;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The grid on which a drawing's coordinates become whole numbers, which are short to write. All lengths of
 * the drawing grow alike, its view box among them, so that it paints the same; the grid is finer than the
 * points of a telephone's screen.
 */
final class DrawingGrid {
    /** Steps along the longer side of a drawing: twice as many as the largest picture of a page has points. */
    private static final int STEPS = 560;

    /** What nobody sees, in steps. */
    private static final double SEEN = 0.6;

    private static final Pattern VIEW_BOX = Pattern.compile(
            "viewBox=[\"']\\s*(?:[-\\d.]+[\\s,]+){2}([\\d.]{1,9})[\\s,]+([\\d.]{1,9})\\s*[\"']");

    /** Where lengths may hide that this class doesn't know, a drawing stays as it is. */
    private static final Pattern UNKNOWN = Pattern.compile("style|Gradient|pattern|filter|mask|marker|text"
            + "|image|Units|pathLength|<svg[^>]*<svg|=\\s*[\"'][-\\d.\\s,]*[\\d.](?:%|[a-z]{2})");

    private static final Set<String> PLACES = Set.of("cx", "cy", "x", "y", "x1", "y1", "x2", "y2",
            "points", "width", "height");
    private static final Set<String> FINE = Set.of("r", "rx", "ry", "stroke-width", "stroke-dasharray",
            "stroke-dashoffset", "viewBox");

    private static final Pattern NUMBER = Pattern.compile("[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?");
    private static final Pattern MOVE = Pattern.compile("(translate|rotate|matrix)\\s*\\(([^)]*)\\)");

    private final int scale;

    private DrawingGrid(int scale) {
        this.scale = scale;
    }

    /** The grid for a drawing; empty where not every length of it is known. */
    static Optional<DrawingGrid> of(String svg) {
        Matcher box = VIEW_BOX.matcher(svg);
        if (!box.find() || UNKNOWN.matcher(svg).find()) {
            return Optional.empty();
        }
        try {
            double side = Math.max(Double.parseDouble(box.group(1)), Double.parseDouble(box.group(2)));
            return side < 1 ? Optional.empty()
                    : Optional.of(new DrawingGrid((int) Math.max(1, Math.round(STEPS / side))));
        } catch (NumberFormatException broken) {
            return Optional.empty();
        }
    }

    /** An attribute's value on the grid. */
    String value(String name, String value) {
        if (PLACES.contains(name)) {
            return numbers(value, 0);
        }
        if (FINE.contains(name)) {
            return numbers(value, 1);
        }
        return name.equals("transform") ? transform(value) : value;
    }

    /** Path data on the grid; empty when it is no path that this class can read. */
    Optional<String> path(String data) {
        return PathData.of(data).map(path -> PathOnGrid.of(path.bent(SEEN / scale), scale));
    }

    private String numbers(String value, int places) {
        return NUMBER.matcher(value).replaceAll(number -> scaled(number.group(), places));
    }

    /** What moves grows with the drawing; what turns or mirrors stays. */
    private String transform(String value) {
        return MOVE.matcher(value).replaceAll(move -> {
            List<String> numbers = new ArrayList<>();
            NUMBER.matcher(move.group(2)).results().forEach(number -> numbers.add(number.group()));
            int fixed = switch (move.group(1)) {
                case "rotate" -> 1;
                case "matrix" -> 4;
                default -> 0;
            };
            for (int i = fixed; i < numbers.size(); i++) {
                numbers.set(i, scaled(numbers.get(i), 1));
            }
            return move.group(1) + "(" + String.join(" ", numbers) + ")";
        });
    }

    private String scaled(String number, int places) {
        BigDecimal scaled = new BigDecimal(number).multiply(BigDecimal.valueOf(scale))
                .setScale(places, RoundingMode.HALF_UP).stripTrailingZeros();
        String plain = scaled.toPlainString();
        return plain.startsWith("0.") ? plain.substring(1)
                : plain.startsWith("-0.") ? "-" + plain.substring(2) : plain;
    }
}
