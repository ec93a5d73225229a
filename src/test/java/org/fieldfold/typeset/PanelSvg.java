package org.fieldfold.typeset;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Draws set panels side by side, type as outlines, so that they can be looked at. */
final class PanelSvg {
    private final SourceSans type;
    private final StringBuilder out = new StringBuilder();

    private PanelSvg(SourceSans type) {
        this.type = type;
    }

    static void write(Path file, SourceSans type, List<SetPanel> panels, double width, double height)
            throws IOException {
        PanelSvg svg = new PanelSvg(type);
        svg.out.append(String.format(Locale.ROOT, "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.2f\" "
                + "height=\"%.2f\" viewBox=\"0 0 %.2f %.2f\"><rect width=\"100%%\" height=\"100%%\" "
                + "fill=\"#fff\"/>%n", width * panels.size(), height, width * panels.size(), height));
        for (int i = 0; i < panels.size(); i++) {
            svg.out.append(String.format(Locale.ROOT,
                    "<g transform=\"translate(%.2f 0)\">%n<rect width=\"%.2f\" "
                    + "height=\"%.2f\" fill=\"none\" stroke=\"#bbb\" stroke-width=\".3\"/>%n", i * width,
                    width, height));
            for (Mark mark : panels.get(i).marks()) {
                svg.mark(mark);
            }
            svg.out.append("</g>\n");
        }
        Files.createDirectories(file.getParent());
        Files.writeString(file, svg.out.append("</svg>\n"));
    }

    private void mark(Mark mark) throws IOException {
        if (mark instanceof Mark.Words words) {
            Shape outline = type.glyphs(words.face(), words.text()).getOutline();
            out.append(String.format(Locale.ROOT,
                    "<path transform=\"translate(%.3f %.3f) scale(%.5f)\" fill=\"%s\" "
                    + "d=\"%s\"/>%n", words.x(), words.baseline(), words.size() / 1000, words.ink().rgb(),
                    path(outline)));
        } else if (mark instanceof Mark.Stroke stroke) {
            out.append(String.format(Locale.ROOT, "<line x1=\"%.3f\" y1=\"%.3f\" x2=\"%.3f\" y2=\"%.3f\" "
                    + "stroke=\"%s\" stroke-width=\"%.3f\"/>%n", stroke.x1(), stroke.y1(), stroke.x2(),
                    stroke.y2(),
                    stroke.ink().rgb(), stroke.width()));
        } else if (mark instanceof Mark.Box box) {
            out.append(String.format(Locale.ROOT,
                    "<rect x=\"%.3f\" y=\"%.3f\" width=\"%.3f\" height=\"%.3f\" "
                    + "fill=\"%s\" stroke=\"%s\" stroke-width=\"%.3f\"/>%n", box.x(), box.y(), box.width(),
                    box.height(),
                    box.fill().map(Mark.Ink::rgb).orElse("none"),
                    box.outline().map(Mark.Ink::rgb).orElse("none"),
                    box.lineWidth()));
        } else if (mark instanceof Mark.Shape shape) {
            StringBuilder points = new StringBuilder();
            shape.points().forEach(point -> points.append(String.format(Locale.ROOT, "%.3f ", point)));
            out.append("<polygon fill=\"" + shape.fill().rgb() + "\" points=\"" + points + "\"/>\n");
        } else if (mark instanceof Mark.Drawing drawing) {
            drawing(drawing);
        } else if (mark instanceof Mark.Bars bars) {
            for (Mark.Box box : bars.boxes()) {
                mark(box);
            }
        } else if (mark instanceof Mark.SquareCode code) {
            out.append(String.format(Locale.ROOT,
                    "<rect x=\"%.3f\" y=\"%.3f\" width=\"%.3f\" height=\"%.3f\" "
                    + "fill=\"#999\"/>%n", code.x(), code.y(), code.size(), code.size()));
        }
    }

    private void drawing(Mark.Drawing drawing) throws IOException {
        Path file = Path.of("content/figures/" + drawing.figure() + ".svg");
        String place = String.format(Locale.ROOT, "x=\"%.3f\" y=\"%.3f\" width=\"%.3f\" height=\"%.3f\"",
                drawing.x(), drawing.y(), drawing.width(), drawing.height());
        if (Files.exists(file)) {
            String svg = Files.readString(file).replaceFirst("(?s)^.*?<svg", "<svg");
            String head = svg.substring(0, svg.indexOf('>')).replaceAll("\\s(width|height|x|y)=\"[^\"]*\"",
                    "");
            out.append(head.replaceFirst("<svg", "<svg "
                    + place)).append(svg.substring(svg.indexOf('>'))).append('\n');
        } else {
            out.append("<rect " + place + " fill=\"#eee\" stroke=\"#888\" stroke-width=\".5\"/>\n");
        }
    }

    private static String path(Shape shape) {
        StringBuilder path = new StringBuilder();
        double[] at = new double[6];
        for (PathIterator it = shape.getPathIterator(null); !it.isDone(); it.next()) {
            int kind = it.currentSegment(at);
            int numbers = kind == PathIterator.SEG_CLOSE ? 0 : kind == PathIterator.SEG_QUADTO ? 4
                    : kind == PathIterator.SEG_CUBICTO ? 6 : 2;
            path.append("MLQCZ".charAt(kind));
            for (int i = 0; i < numbers; i++) {
                path.append(String.format(Locale.ROOT, "%.1f ", at[i]));
            }
        }
        return path.toString();
    }
}
