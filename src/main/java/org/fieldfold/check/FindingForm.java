package org.fieldfold.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Severity;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;
import org.fieldfold.trace.KeptResults;
import org.fieldfold.trace.ResultReader;
import org.fieldfold.trace.ResultWriter;

/**
 * Findings as they are written down, their places as offsets in files.
 *
 * @param files of the base as it is read now, by path; a finding in any other is not taken
 */
public record FindingForm(Map<String, SourceFile> files) implements KeptResults.Form<List<Finding>> {
    @Override
    public void write(List<Finding> findings, ResultWriter out) {
        out.number(findings.size());
        for (Finding finding : findings) {
            out.text(finding.severity().name());
            out.text(finding.span().file().path());
            out.number(finding.span().start());
            out.number(finding.span().end());
            out.text(finding.rule());
            out.text(finding.message());
            out.text(finding.hint());
        }
    }

    @Override
    public Optional<List<Finding>> read(ResultReader in) {
        List<Finding> findings = new ArrayList<>();
        boolean whole = true;
        for (int left = in.count(); left > 0; left--) {
            Severity severity = Severity.valueOf(in.text());
            SourceFile file = files.get(in.text());
            int start = in.number();
            int end = in.number();
            String rule = in.text();
            String message = in.text();
            String hint = in.text();
            whole &= file != null;
            if (whole) {
                findings.add(new Finding(severity, new Span(file, start, end), rule, message, hint));
            }
        }
        return whole ? Optional.of(List.copyOf(findings)) : Optional.empty();
    }
}
