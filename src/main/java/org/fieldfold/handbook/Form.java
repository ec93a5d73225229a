package org.fieldfold.handbook;

import java.util.Optional;
import org.fieldfold.manuscript.Leaf;

/**
 * What differs between the handbook in one file and the handbook as a folder: addresses, pictures, headings.
 */
interface Form {
    /**
     * The address of a page or of a part of it, seen from a page of this form; empty when there is no such
     * page.
     */
    Optional<String> href(String link);

    /** What a page is called where links lead to it. */
    String anchor(Leaf page);

    String anchor(Leaf page, String part);

    /** The address of the same page in the handbook of another language. */
    String inLanguage(String language, Leaf page);

    /** Writes a drawing with what it shows; nothing when there is no such figure. */
    void picture(Markup out, String figure, String alt);

    /** Writes a drawing as decoration beside words that say the same. */
    void ornament(Markup out, String figure);

    /** How a script puts the drawing of a figure on a page: a class of the style sheet, or a file. */
    Optional<String> drawn(String figure);

    /**
     * The class of the style sheet that puts a column's name in front of a cell on a narrow screen; empty where the
     * cell carries the name itself.
     */
    default Optional<String> column(String name) {
        return Optional.empty();
    }

    /** Whether tier 3 waits behind its caution until a box is ticked; elsewhere the caution stands first. */
    boolean gated();

    /** Whether a script adds to it, to which marks in the text speak. */
    boolean scripted();

    /** Whether files stand beside its pages. */
    boolean hasFiles();

    /** Level of the page's own title. */
    int titleLevel(Leaf page);
}
