package org.fieldfold.preview;

import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.fieldfold.typeset.Face;
import org.fieldfold.typeset.Mark;
import org.fieldfold.typeset.SetPanel;

/**
 * Draws a set panel in SVG, at the places and in the sizes in which it is printed. Its type is that of the
 * press, set without kerning as the press sets it: the class of each face says which.
 */
public final class PanelDrawing {
    private final UnaryOperator<String> figures;
    private final StringBuilder out = new StringBuilder();

    private PanelDrawing(UnaryOperator<String> figures) {
        this.figures = figures;
    }

    /**
     * The drawing.
     *
     * @param width and {@code height} of the panel as its reader holds it, in points
     * @param figures from a figure's id to the address at which a page finds it
     */
    public static String of(SetPanel panel, String name, double width, double height,
            UnaryOperator<String> figures) {
        PanelDrawing drawing = new PanelDrawing(figures);
        drawing.line("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"panel\" role=\"img\" aria-label=\"%s\" "
                + "width=\"%spt\" height=\"%spt\" viewBox=\"0 0 %s %s\">", escaped(name), number(width),
                number(height), number(width), number(height));
        panel.marks().forEach(drawing::mark);
        return drawing.out.append("</svg>").toString();
    }

    private void mark(Mark mark) {
        if (mark instanceof Mark.Words words) {
            line("<text class=\"%s\" x=\"%s\" y=\"%s\" font-size=\"%s\" fill=\"%s\" xml:space=\"preserve\">%s"
                    + "</text>", face(words.face()), number(words.x()), number(words.baseline()),
                    number(words.size()), words.ink().rgb(), escaped(words.text()));
        } else if (mark instanceof Mark.Stroke stroke) {
            line("<path d=\"M%s %sL%s %s\" stroke=\"%s\" stroke-width=\"%s\"/>", number(stroke.x1()),
                    number(stroke.y1()), number(stroke.x2()), number(stroke.y2()), stroke.ink().rgb(),
                    number(stroke.width()));
        } else if (mark instanceof Mark.Box box) {
            box(box);
        } else if (mark instanceof Mark.Shape shape) {
            line("<polygon fill=\"%s\" points=\"%s\"/>", shape.fill().rgb(), shape.points().stream()
                    .map(PanelDrawing::number).collect(Collectors.joining(" ")));
        } else if (mark instanceof Mark.Drawing figure) {
            line("<image href=\"%s\" x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\"/>",
                    escaped(figures.apply(figure.figure())), number(figure.x()), number(figure.y()),
                    number(figure.width()), number(figure.height()));
        } else if (mark instanceof Mark.Bars bars) {
            bars.boxes().forEach(this::box);
        } else if (mark instanceof Mark.SquareCode code) {
            // only where it stands: its pattern is the press's
            box(new Mark.Box(code.x(), code.y(), code.size(), code.size(), java.util.Optional.empty(),
                    java.util.Optional.of(Mark.Ink.BLACK), 0.5));
        }
    }

    private void box(Mark.Box box) {
        line("<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"%s\" stroke=\"%s\" stroke-width=\"%s\"/>",
                number(box.x()), number(box.y()), number(box.width()), number(box.height()),
                box.fill().map(Mark.Ink::rgb).orElse("none"), box.outline().map(Mark.Ink::rgb).orElse("none"),
                number(box.lineWidth()));
    }

    private void line(String form, Object... parts) {
        out.append(String.format(Locale.ROOT, form, parts)).append('\n');
    }

    private static String face(Face face) {
        return "face-" + face.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Thousandths of a point, as the press rounds. */
    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.3f", value);
        return text.replaceFirst("\\.?0+$", "");
    }

    private static String escaped(String text) {
        return text.codePoints().filter(c -> c >= ' ').mapToObj(Character::toString)
                .map(PanelDrawing::entity).collect(Collectors.joining());
    }

    private static String entity(String c) {
        List<String> special = List.of("&", "<", ">", "\"");
        return switch (special.indexOf(c)) {
            case 0 -> "&amp;";
            case 1 -> "&lt;";
            case 2 -> "&gt;";
            case 3 -> "&quot;";
            default -> c;
        };
    }
}
