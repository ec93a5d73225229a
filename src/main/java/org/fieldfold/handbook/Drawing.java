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
            "viewBox=[\"']\\s*[-\\d.]+[\\s,]+[-\\d.]+[\\s,]+"
            + "(\\d{1,6})(?:\\.\\d+)?[\\s,]+(\\d{1,6})(?:\\.\\d+)?\\s*[\"']");

    static Drawing of(String name, String file, Figure figure) {
        // whatever the other signs are, these are one byte each
        Matcher box = VIEW_BOX.matcher(figure.drawn() ? new String(figure.bytes(), StandardCharsets.ISO_8859_1) : "");
        boolean known = box.find();
        int width = known ? Math.max(1, Integer.parseInt(box.group(1))) : 4;
        int height = known ? Math.max(1, Integer.parseInt(box.group(2))) : 3;
        return new Drawing(name, file, width, height, figure);
    }

    private static String text(Figure figure) {
        return new String(figure.bytes(), StandardCharsets.UTF_8);
    }

    /**
     * The figure as a data: address that may stand between double quotes in a style sheet inside a page. Of a
     * drawing only what a browser paints is kept.
     */
    String data() {
        if (!figure.drawn()) {
            String type = file.endsWith(".png") ? "png" : "jpeg";
            return "data:image/" + type + ";base64," + Base64.getEncoder().encodeToString(figure.bytes());
        }
        return "data:image/svg+xml," + new TerseSvg(text(figure)).encoded();
    }
}
