package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.List;

/**
 * An element of the logical structure: what a screen reader walks through. Tags stand in reading order
 * whatever the sheet looks like; marks point at them.
 */
public final class Tag {
    /** The roles in use, by their names in ISO 32000-1, 14.8.4. */
    public enum Role {
        DOCUMENT("Document"), SECTION("Sect"), H1("H1"), H2("H2"), H3("H3"), PARAGRAPH("P"), LIST("L"),
        ITEM("LI"), LABEL("Lbl"), ITEM_BODY("LBody"), TABLE("Table"), TABLE_HEAD("THead"),
        TABLE_BODY("TBody"), ROW("TR"), HEADER_CELL("TH"), CELL("TD"), FIGURE("Figure"), CAPTION("Caption"),
        SPAN("Span"), LINK("Link"), NOTE("Note");

        private final String pdfName;

        Role(String pdfName) {
            this.pdfName = pdfName;
        }

        public String pdfName() {
            return pdfName;
        }
    }

    private final Role role;
    private final String alt;
    private final String language;
    private final String title;
    private final String expansion;
    private final List<Tag> children = new ArrayList<>();

    private Tag(Role role, String alt, String language, String title, String expansion) {
        this.role = role;
        this.alt = alt;
        this.language = language;
        this.title = title;
        this.expansion = expansion;
    }

    /** The root of a document. */
    public static Tag document() {
        return new Tag(Role.DOCUMENT, "", "", "", "");
    }

    /** Adds and returns a child. */
    public Tag add(Role childRole) {
        return add(new Tag(childRole, "", "", "", ""));
    }

    /** Adds a figure with what a person who cannot see it needs to know. */
    public Tag addFigure(String alternative) {
        return add(new Tag(Role.FIGURE, alternative, "", "", ""));
    }

    /** Adds a section with a title for the outline. */
    public Tag addSection(String sectionTitle) {
        return add(new Tag(Role.SECTION, "", "", sectionTitle, ""));
    }

    /** Adds a stretch of text in another language, as in {@code la} for a scientific name. */
    public Tag addSpan(String spanLanguage) {
        return add(new Tag(Role.SPAN, "", spanLanguage, "", ""));
    }

    /** Adds an abbreviation with what it stands for. */
    public Tag addAbbreviation(String standsFor) {
        return add(new Tag(Role.SPAN, "", "", "", standsFor));
    }

    /** Adds a link; {@code contents} says where it leads. */
    public Tag addLink(String contents) {
        return add(new Tag(Role.LINK, contents, "", "", ""));
    }

    /** Takes in a child that other trees may have as well. */
    void adopt(Tag child) {
        children.add(child);
    }

    private Tag add(Tag child) {
        children.add(child);
        return child;
    }

    public Role role() {
        return role;
    }

    /** For a figure its alternative, for a link where it leads; otherwise empty. */
    public String alt() {
        return alt;
    }

    /** Language of what is in it, or empty for that of the document. */
    public String language() {
        return language;
    }

    /** Title of a section, or empty. */
    public String title() {
        return title;
    }

    /** What an abbreviation stands for, or empty. */
    public String expansion() {
        return expansion;
    }

    public List<Tag> children() {
        return List.copyOf(children);
    }
}
