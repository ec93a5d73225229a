package org.fieldfold;

import org.fieldfold.fold.FlipEdge;
import org.fieldfold.manuscript.OfficePanel;
import org.fieldfold.pdf.PrintJob;
import org.fieldfold.typeset.SetGuide;

/**
 * One sheet of a build. It is set anew whenever that is asked for: setting costs little once its run is set,
 * and a thousand copies that are kept cost much.
 *
 * @param path in the build
 * @param office whom it tells its reader to call
 */
record PrintedCopy(String path, PrintRun run, OfficePanel office, FlipEdge flip) {
    SetGuide set() {
        return run.set(office);
    }

    PrintJob job() {
        return run.job(set(), flip);
    }

    /** All that its file depends on. */
    SheetOrder order() {
        return run.order(office, flip);
    }
}
