package org.fieldfold.report;

import java.util.List;
import org.fieldfold.source.Finding;
import org.fieldfold.source.FindingText;

/** The forms in which findings are handed over. */
public enum FindingFormat {
    /** For people: source line, caret, hint; errors last. */
    TEXT {
        @Override
        public String write(List<Finding> findings, boolean colour) {
            return new FindingText(colour).print(findings);
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
