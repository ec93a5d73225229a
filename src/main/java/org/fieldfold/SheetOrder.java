package org.fieldfold;

import java.time.LocalDate;
import org.fieldfold.entry.Edition;
import org.fieldfold.fold.Gathering;
import org.fieldfold.fold.Imposition;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.pdf.PrintJob;
import org.fieldfold.pdf.SheetWords;

/**
 * One file to be printed: with the press's figures and the characters that its type is cut to, all that the
 * bytes of the file depend on.
 *
 * @param sheet what its panels lie on
 */
record SheetOrder(Setting setting, Imposition sheet, String subject, String publisher, LocalDate issued,
        PrintJob.Surround around, SheetWords words) {
    static SheetOrder of(Setting setting, Imposition sheet, Edition edition, PrintJob.Surround around,
            SheetWords words) {
        return new SheetOrder(setting, sheet, edition.title() + ", " + edition.year(), edition.publisher(),
                edition.issued(), around, words);
    }

    PrintJob job(Setting.Set set) {
        Manuscript manuscript = setting.manuscript();
        return new PrintJob(manuscript.title(), subject, manuscript.language(), manuscript.year(), publisher,
                issued,
                set.guide(), new Gathering(sheet, set.sheets()), around, words, manuscript.proof());
    }
}
