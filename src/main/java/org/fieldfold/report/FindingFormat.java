package org.fieldfold.report;

import java.util.List;
import org.fieldfold.source.Finding;
import org.fieldfold.source.FindingPrinter;

/** The forms in which findings are handed over. */
public enum FindingFormat {
    /** For people: source line, caret, hint. */
    TEXT {
        @Override
        public String write(List<Finding> findings, boolean colour) {
            FindingPrinter printer = new FindingPrinter(colour);
            StringBuilder out = new StringBuilder();
            findings.forEach(finding -> out.append(printer.print(finding)));
            return out.append(FindingPrinter.summary(findings)).append('\n').toString();
        }
    },
    /** For our own programs: one object a finding. */
    JSON {
        @Override
        public String write(List<Finding> findings, boolean colour) {
            return JsonFindings.write(findings);
        }
    },
    /** SARIF 2.1.0, which code hosts show beside the lines. */
    SARIF {
        @Override
        public String write(List<Finding> findings, boolean colour) {
            return SarifFindings.write(findings);
        }
    },
    /** JUnit XML, which build servers count. */
    JUNIT {
        @Override
        public String write(List<Finding> findings, boolean colour) {
            return JUnitFindings.write(findings);
        }
    };

    /** All findings in this form; the same findings give the same text. */
    public abstract String write(List<Finding> findings, boolean colour);
}
