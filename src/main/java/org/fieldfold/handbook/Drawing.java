package org.fieldfold.handbook;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fieldfold.entry.Figure;

/**
 * A figure as the handbook uses it.
 *
 * @param name short name in style sheets
 * @param file file name in the folder
 * @param width and {@code height}: its proportions
 */
record Drawing(String name, String file, int width, int height, Figure figure) {
    private static final Pattern VIEW_BOX = Pattern.compile(
            "viewBox=[\"']\\s*[-\\d.]+[\\s,]+[-\\d.]+[\\s,]+(\\d{1,6})(?:\\.\\d+)?[\\s,]+(\\d{1,6})(?:\\.\\d+)?\\s*[\"']");
    private static final Pattern TITLE = Pattern.compile("<title>[^<]*</title>");
    private static final Pattern BETWEEN = Pattern.compile(">\\s+<");
    private static final Pattern PATH = Pattern.compile("(?<= d=')[^']*");
    private static final Pattern ID = Pattern.compile("(?<= id=')[^'<>&\\s]+(?=')");

    static Drawing of(String name, String file, Figure figure) {
        Matcher box = VIEW_BOX.matcher(figure.drawn() ? text(figure) : "");
        boolean known = box.find();
        int width = known ? Math.max(1, Integer.parseInt(box.group(1))) : 4;
        int height = known ? Math.max(1, Integer.parseInt(box.group(2))) : 3;
        return new Drawing(name, file, width, height, figure);
    }

    private static String text(Figure figure) {
        return new String(figure.bytes(), StandardCharsets.UTF_8);
    }

    /**
     * The figure as a data: address that may stand between double quotes in a style sheet inside a page. Of a drawing
     * only what a browser paints is kept.
     */
    String data() {
        if (!figure.drawn()) {
            String type = file.endsWith(".png") ? "png" : "jpeg";
            return "data:image/" + type + ";base64," + Base64.getEncoder().encodeToString(figure.bytes());
        }
        String drawing = TITLE.matcher(text(figure)).replaceAll("");
        drawing = BETWEEN.matcher(drawing.replace('"', '\'').strip()).replaceAll("><");
        drawing = drawing.replace("='#000'", "='black'").replace("='#fff'", "='white'").replace("='0.", "='.");
        drawing = PATH.matcher(shortIds(drawing)).replaceAll(path -> Matcher.quoteReplacement(terse(path.group())));
        return "data:image/svg+xml," + encoded(drawing);
    }

    /** Ids are there for mirrored halves only: short ones paint the same. */
    private static String shortIds(String drawing) {
        String mended = drawing;
        int next = 0;
        for (Matcher id = ID.matcher(drawing); id.find(); next++) {
            mended = mended.replace("'" + id.group() + "'", "'_" + next + "'")
                    .replace("'#" + id.group() + "'", "'#_" + next + "'")
                    .replace("#" + id.group() + ")", "#_" + next + ")");
        }
        return mended;
    }

    /** Path data without the blanks and noughts that its grammar does not need (SVG 1.1, 8.3.9). */
    private static String terse(String path) {
        return path.replaceAll("[\\s,]+", " ").replaceAll("(?<=[A-Za-z]) | (?=[-A-Za-z])", "")
                .replaceAll("(?<![\\d.])0\\.(?=\\d)", ".").replaceAll("(?<=\\.\\d{1,6}) (?=\\.)", "");
    }

    private static String encoded(String drawing) {
        StringBuilder out = new StringBuilder(drawing.length() + drawing.length() / 8);
        for (byte unit : drawing.getBytes(StandardCharsets.UTF_8)) {
            boolean plain = unit > 0x1F && unit != 0x7F && "\"#%<]\\".indexOf(unit) < 0;
            if (plain) {
                out.append((char) unit);
            } else {
                out.append('%').append(Character.forDigit(unit >> 4 & 15, 16))
                        .append(Character.forDigit(unit & 15, 16));
            }
        }
        return out.toString();
    }
}
