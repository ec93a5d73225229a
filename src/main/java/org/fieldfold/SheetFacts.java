package org.fieldfold;

import java.util.List;
import java.util.Optional;
import org.fieldfold.report.FitRow;
import org.fieldfold.source.Finding;

/**
 * What is known of a file that is to be printed, without its being set.
 *
 * @param path in the build
 * @param order what its order amounts to; empty when nothing is kept
 * @param letters every character of it once
 * @param fit how full its panels are; empty for copies of what is told already
 */
record SheetFacts(String path, Optional<String> order, String letters, List<FitRow> fit, List<Finding> findings) {
    SheetFacts {
        fit = List.copyOf(fit);
        findings = List.copyOf(findings);
    }
}
