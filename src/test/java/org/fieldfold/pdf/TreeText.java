package org.fieldfold.pdf;

import java.awt.geom.Rectangle2D;
import java.util.List;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.PanelSlot;
import org.fieldfold.fold.Side;

/**
 * The structure tree of a file in few words: an element a line, with what it says besides its text, and a
 * line {@code @front column 2, row 1, turned 180} where reading goes on on another panel.
 */
final class TreeText {
    private final Imposition imposition;
    private final StringBuilder text = new StringBuilder();
    private String panel = "";

    private TreeText(Imposition imposition) {
        this.imposition = imposition;
    }

    static String of(FileTree.Element root, Imposition imposition) {
        TreeText tree = new TreeText(imposition);
        tree.element(root, 0);
        return tree.text.toString();
    }

    private void element(FileTree.Element element, int depth) {
        element.contents().findFirst().ifPresent(this::place);
        boolean leaf = element.elements().isEmpty();
        text.append("  ".repeat(depth)).append(element.role());
        says(element, "T", "");
        says(element, "Lang", "lang ");
        says(element, "E", "short for ");
        says(element, "Alt", "alt ");
        for (String attribute : List.of("ListNumbering", "Scope")) {
            if (!element.attribute(attribute).isEmpty()) {
                text.append(" [").append(element.attribute(attribute)).append(']');
            }
        }
        if (leaf) {
            words(element.text());
        }
        text.append('\n');
        for (FileTree.Kid kid : leaf ? List.<FileTree.Kid>of() : element.kids()) {
            if (kid instanceof FileTree.Element inner) {
                element(inner, depth + 1);
            } else if (kid instanceof FileTree.Content content) {
                place(content);
                text.append("  ".repeat(depth + 1)).append('-');
                words(content.text());
                text.append('\n');
            }
        }
    }

    private void says(FileTree.Element element, String key, String word) {
        if (!element.says(key).isEmpty()) {
            text.append(" (").append(word).append(element.says(key)).append(')');
        }
    }

    private void words(String words) {
        if (!words.isEmpty()) {
            text.append(" | ").append(words.strip());
        }
    }

    private void place(FileTree.Content content) {
        if (content.things().isEmpty()) {
            return;
        }
        Rectangle2D box = content.things().get(0).box();
        int turn = content.things().stream().filter(DrawnPage.Thing::isType).findFirst()
                .map(DrawnPage.Thing::turn).orElse(-1);
        double y = imposition.sheetHeight() - box.getCenterY();
        List<PanelSlot> slots = imposition.on(Side.values()[content.page()]);
        long column = 1 + slots.stream().mapToDouble(PanelSlot::x).distinct()
                .filter(x -> x > 1 && x <= box.getCenterX()).count();
        long row = 1 + slots.stream().mapToDouble(PanelSlot::y).distinct().filter(top -> top > 1 && top <= y)
                .count();
        String here = (content.page() == 0 ? "@front" : "@back") + " column " + column + ", row " + row;
        if (turn >= 0 && !panel.equals(here)) {
            panel = here;
            text.append(here).append(turn == 0 ? "" : ", turned " + turn).append('\n');
        }
    }
}
