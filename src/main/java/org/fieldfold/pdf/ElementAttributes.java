package org.fieldfold.pdf;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.fieldfold.typeset.Tag;

/**
 * Attributes of elements (ISO 32000-1, 14.8.5): boxes of figures, numbering of lists, scope of header cells.
 */
final class ElementAttributes {
    private static final COSName OWNER = COSName.O;
    private static final COSName BBOX = COSName.BBOX;

    /** Those that many elements have alike, written once. */
    private final Map<String, COSDictionary> shared = new TreeMap<>();

    Optional<COSDictionary> of(TagNode node) {
        return switch (node.tag().role()) {
            case FIGURE -> node.box().map(ElementAttributes::figure);
            case LIST -> numbering(node).map(name -> shared("List", "ListNumbering", name));
            case HEADER_CELL -> Optional.of(shared("Table", "Scope", scope(node)));
            default -> Optional.empty();
        };
    }

    private static COSDictionary figure(PageBox box) {
        COSDictionary layout = new COSDictionary();
        layout.setDirect(true);
        layout.setItem(OWNER, COSName.getPDFName("Layout"));
        layout.setItem(BBOX, box.toArray());
        layout.setItem(COSName.getPDFName("Placement"), COSName.getPDFName("Block"));
        return layout;
    }

    private COSDictionary shared(String owner, String key, String value) {
        return shared.computeIfAbsent(value, unseen -> {
            COSDictionary attribute = new COSDictionary();
            attribute.setItem(OWNER, COSName.getPDFName(owner));
            attribute.setItem(COSName.getPDFName(key), COSName.getPDFName(value));
            return attribute;
        });
    }

    /** Cells of the head stand over columns, others before rows. */
    private static String scope(TagNode cell) {
        boolean inHead = cell.parent().flatMap(TagNode::parent)
                .filter(part -> part.tag().role() == Tag.Role.TABLE_HEAD).isPresent();
        return inHead ? "Column" : "Row";
    }

    /** Told by the first label; a list without labels has none to be told. */
    private static Optional<String> numbering(TagNode list) {
        return list.children().stream().flatMap(item -> item.children().stream()).map(TagNode::label)
                .map(String::strip).filter(label -> !label.isEmpty()).findFirst()
                .map(ElementAttributes::numbering);
    }

    private static String numbering(String label) {
        char first = label.charAt(0);
        if (first >= '0' && first <= '9') {
            return "Decimal";
        }
        if (label.length() > 1 && first >= 'a' && first <= 'z') {
            return "LowerAlpha";
        }
        if (label.length() > 1 && first >= 'A' && first <= 'Z') {
            return "UpperAlpha";
        }
        return first == '\u25a1' || first == '\u25a0' || first == '\u2610' ? "Square" : "Disc";
    }
}
