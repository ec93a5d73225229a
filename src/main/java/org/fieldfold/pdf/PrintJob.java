package org.fieldfold.pdf;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.fieldfold.fold.Gathering;
import org.fieldfold.fold.Imposition;
import org.fieldfold.typeset.Mark;
import org.fieldfold.typeset.SetGuide;
import org.fieldfold.typeset.SetPanel;

/**
 * A sheet, or several that are read one after another, to be printed.
 *
 * @param title of the document, shown in the window's title bar
 * @param subject a sentence on what it is, or empty
 * @param language as in {@code en}
 * @param year of the edition
 * @param issued stands in the file as the day on which it was made, whenever that is done
 * @param sheets what the panels lie on
 * @param around what stands around the panels
 * @param words of the marks around the panels, in the guide's language
 * @param proof a word across every panel while findings stand; empty on a clean copy
 */
public record PrintJob(String title, String subject, String language, int year, String publisher,
        LocalDate issued, SetGuide guide, Gathering sheets, Surround around, SheetWords words,
        Optional<String> proof) {
    /** What stands around the panels, for those who print. */
    public enum Surround {
        /** Marks for folds, crosses, bar, rulers, and small words along the edges. */
        FOLDS,
        /** On pages in large type: the bar on the first, with words as large as the rest. */
        PAGES
    }

    public PrintJob {
        for (String text : new String[] {title, subject, publisher}) {
            if (text.codePoints().anyMatch(Character::isISOControl)) {
                throw new IllegalArgumentException("a control character in \"" + text + "\"");
            }
        }
        if (title.isBlank()) {
            throw new IllegalArgumentException("a sheet needs a title");
        }
        if (!language.matches("[a-z]{2,3}(-[A-Za-z0-9]{2,8})*")) {
            throw new IllegalArgumentException("expected a language such as en, found '" + language + "'");
        }
    }

    /** One sheet, with all that stands around its panels. */
    public PrintJob(String title, String subject, String language, int year, String publisher,
            LocalDate issued, SetGuide guide, Imposition imposition, SheetWords words,
            Optional<String> proof) {
        this(title, subject, language, year, publisher, issued, guide, new Gathering(imposition, 1),
                Surround.FOLDS, words, proof);
    }

    /** What every sheet looks like. */
    public Imposition imposition() {
        return sheets.sheet();
    }

    /** The characters that the sheet needs: what {@link Press#freeze} wants to know. */
    public Set<Integer> characters() {
        Set<Integer> found = new TreeSet<>();
        for (SetPanel panel : guide.panels()) {
            for (Mark mark : panel.marks()) {
                if (mark instanceof Mark.Words line) {
                    line.text().codePoints().forEach(found::add);
                }
            }
        }
        words.characters().forEach(found::add);
        proof.ifPresent(word -> word.codePoints().forEach(found::add));
        return found;
    }
}
