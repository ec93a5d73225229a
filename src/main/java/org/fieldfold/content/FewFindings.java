package org.fieldfold.content;

import java.util.ArrayList;
import java.util.Collection;
import org.fieldfold.source.Finding;

/** The findings of one file: of a file that is wrong throughout, the first ones, and that there are more. */
final class FewFindings extends ArrayList<Finding> {
    static final int MOST = 500;
    private static final long serialVersionUID = 1;

    @Override
    public boolean add(Finding finding) {
        if (size() < MOST) {
            return super.add(finding);
        }
        return size() == MOST && super.add(new Finding(finding.severity(), finding.span(), finding.rule(),
                finding.message(), "mend the first ones: there are more than " + MOST + " in this file, and this is "
                        + "the last that is said"));
    }

    @Override
    public boolean addAll(Collection<? extends Finding> more) {
        boolean changed = false;
        for (Finding finding : more) {
            changed |= add(finding);
        }
        return changed;
    }
}
