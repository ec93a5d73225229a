package org.fieldfold.content;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * What stands in the attributes of a drawing that say where ink goes: what a browser and the drawing library
 * read alike. Where a value is wrong each of them guesses otherwise, or breaks.
 */
final class DrawingValues {
    private record Form(String expected, Predicate<String> fits) {
    }

    private static final String NUMBER = "number of at most 1,000,000";
    private static final Form PLACE = new Form("a " + NUMBER, DrawingValues::isLength);
    private static final Form LENGTH = new Form("a " + NUMBER + " and not below 0",
            value -> isLength(value) && !value.startsWith("-"));
    private static final Form SHARE = new Form("a number from 0 to 1", value -> within(value, 0, 1));
    private static final Pattern COLOUR_IN_DIGITS = Pattern.compile("#(?:[0-9a-fA-F]{3}|[0-9a-fA-F]{6})");
    private static final Pattern COLOUR_IN_NUMBERS = Pattern.compile(
            "rgb\\(\\s*[0-9]{1,3}%?(?:\\s*,\\s*[0-9]{1,3}%?){2}\\s*\\)");
    private static final Form COLOUR = new Form("a colour as in '#2a5a1a' or 'black'", DrawingValues::isColour);
    private static final Form PAINT = new Form("a colour as in '#2a5a1a' or 'black', or 'none'",
            value -> value.equals("none") || isColour(value));
    private static final Pattern SIDE = Pattern.compile("([0-9]{1,7}(?:\\.[0-9]{1,9})?)(px|pt|pc|mm|cm|in|%|)");
    private static final double SMALLEST = 0.001;
    private static final double THINNEST = 1000;

    private static final Map<String, Form> FORMS = new TreeMap<>(Map.ofEntries(
            Map.entry("d", new Form("path data, commands with their numbers of at most 1,000,000",
                    DrawingScan::isPath)),
            Map.entry("points", new Form("pairs of numbers with blanks or commas between all of them",
                    value -> DrawingScan.numbers(value).filter(all -> all.size() % 2 == 0).isPresent())),
            Map.entry("transform", new Form("functions as in 'translate(1 2) rotate(30)'",
                    DrawingScan::isTransform)),
            Map.entry("stroke-dasharray", new Form("'none', or lengths of which the sum is at least 0.01",
                    DrawingValues::isDashes)),
            Map.entry("stroke-miterlimit", new Form("a number from 1 to 1,000", value -> within(value, 1, 1000))),
            Map.entry("fill", PAINT), Map.entry("stroke", PAINT), Map.entry("color", COLOUR),
            Map.entry("opacity", SHARE), Map.entry("fill-opacity", SHARE), Map.entry("stroke-opacity", SHARE),
            Map.entry("stroke-linecap", words("butt", "round", "square")),
            Map.entry("stroke-linejoin", words("miter", "round", "bevel")),
            Map.entry("fill-rule", words("nonzero", "evenodd")), Map.entry("clip-rule", words("nonzero", "evenodd")),
            Map.entry("display", words("inline", "none")), Map.entry("visibility", words("visible", "hidden")),
            Map.entry("overflow", words("visible", "hidden")),
            Map.entry("clipPathUnits", words("userSpaceOnUse", "objectBoundingBox")),
            Map.entry("paint-order", words("normal", "fill stroke", "stroke fill", "fill", "stroke")),
            Map.entry("shape-rendering", words("auto", "optimizeSpeed", "crispEdges", "geometricPrecision"))));

    static {
        List.of("x", "y", "x1", "y1", "x2", "y2", "cx", "cy", "stroke-dashoffset")
                .forEach(name -> FORMS.put(name, PLACE));
        List.of("r", "rx", "ry", "width", "height", "stroke-width").forEach(name -> FORMS.put(name, LENGTH));
    }

    private DrawingValues() {
    }

    /** What would be expected in place of a value; empty when it may stand. */
    static Optional<String> expected(String attribute, String value) {
        return Optional.ofNullable(FORMS.get(attribute)).filter(form -> !form.fits.test(value.strip()))
                .map(Form::expected);
    }

    /** The same of a viewBox, on which everything else is measured. */
    static Optional<String> expectedBox(String value) {
        List<Double> box = DrawingScan.numbers(value).orElse(List.of());
        return box.size() == 4 && box.get(2) >= SMALLEST && box.get(3) >= SMALLEST
                && box.get(2) / box.get(3) < THINNEST && box.get(3) / box.get(2) < THINNEST ? Optional.empty()
                : Optional.of("a viewBox of four numbers, the last two above 0");
    }

    /**
     * The same of width and height of the whole drawing, which say nothing that the viewBox does not: drawn in
     * other proportions, or with one of the two alone, it would lie somewhere else in print.
     *
     * @param viewBox that may stand
     */
    static Optional<String> expectedSides(Optional<String> width, Optional<String> height, String viewBox) {
        List<Double> box = DrawingScan.numbers(viewBox).orElseThrow();
        return width.isEmpty() && height.isEmpty() || isAlike(width.orElse("").strip(), height.orElse("").strip(),
                box.get(2) / box.get(3)) ? Optional.empty()
                : Optional.of("neither width nor height, or both in the proportions of the viewBox");
    }

    private static boolean isAlike(String width, String height, double proportion) {
        var wide = SIDE.matcher(width);
        var high = SIDE.matcher(height);
        if (!wide.matches() || !high.matches() || !wide.group(2).equals(high.group(2))) {
            return false;
        }
        double found = Double.parseDouble(wide.group(1)) / Double.parseDouble(high.group(1));
        return wide.group(2).equals("%") ? found == 1 : Math.abs(found / proportion - 1) < 0.001;
    }

    private static Form words(String... words) {
        return new Form("one of " + String.join(", ", words), Set.of(words)::contains);
    }

    private static boolean isLength(String value) {
        return DrawingScan.isNumber(value.endsWith("px") ? value.substring(0, value.length() - 2)
                : value.endsWith("%") ? value.substring(0, value.length() - 1) : value);
    }

    private static boolean within(String value, double from, double to) {
        return DrawingScan.isNumber(value) && Double.parseDouble(value) >= from && Double.parseDouble(value) <= to;
    }

    private static boolean isDashes(String value) {
        return value.equals("none") || DrawingScan.numbers(value).filter(all -> !all.isEmpty()
                && all.stream().allMatch(dash -> dash >= 0)
                && all.stream().mapToDouble(Double::doubleValue).sum() >= 0.01).isPresent();
    }

    private static boolean isColour(String value) {
        return COLOUR_IN_DIGITS.matcher(value).matches() || COLOUR_IN_NUMBERS.matcher(value).matches()
                || DrawingColours.NAMES.contains(value);
    }
}
