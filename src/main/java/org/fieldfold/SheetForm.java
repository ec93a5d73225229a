package org.fieldfold;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.check.FindingForm;
import org.fieldfold.report.FitRow;
import org.fieldfold.source.Finding;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;
import org.fieldfold.trace.KeptResults;
import org.fieldfold.trace.ResultReader;
import org.fieldfold.trace.ResultWriter;

/**
 * What is known of sheets as it is written down, places as offsets in files.
 *
 * @param files of the base as it is read now, by path; what lies in any other is not taken
 */
record SheetForm(Map<String, SourceFile> files) implements KeptResults.Form<List<SheetFacts>> {
    @Override
    public void write(List<SheetFacts> sheets, ResultWriter out) {
        out.number(sheets.size());
        for (SheetFacts sheet : sheets) {
            out.text(sheet.path());
            out.text(sheet.order().orElse(""));
            out.text(sheet.letters());
            out.number(sheet.fit().size());
            sheet.fit().forEach(row -> write(row, out));
            new FindingForm(files).write(sheet.findings(), out);
        }
    }

    private static void write(FitRow row, ResultWriter out) {
        out.text(row.guide());
        out.text(row.paper());
        out.number(row.panel());
        out.text(row.section());
        out.fraction(row.used());
        out.fraction(row.typeSize());
        out.fraction(row.leading());
        out.number(row.forms().size());
        row.forms().forEach(form -> {
            out.text(form.field());
            out.number(form.brief() ? 1 : 0);
        });
        out.number(row.over().isPresent() ? 1 : 0);
        row.over().ifPresent(over -> {
            out.text(over.entry());
            out.text(over.field());
            out.text(over.at().file().path());
            out.number(over.at().start());
            out.number(over.at().end());
            out.number(over.lines());
        });
    }

    @Override
    public Optional<List<SheetFacts>> read(ResultReader in) {
        List<SheetFacts> sheets = new ArrayList<>();
        boolean whole = true;
        for (int left = in.count(); left > 0; left--) {
            String path = in.text();
            Optional<String> order = Optional.of(in.text()).filter(hash -> !hash.isEmpty());
            String letters = in.text();
            List<FitRow> fit = new ArrayList<>();
            for (int rows = in.count(); rows > 0; rows--) {
                Optional<FitRow> row = row(in);
                row.ifPresent(fit::add);
                whole &= row.isPresent();
            }
            Optional<List<Finding>> findings = new FindingForm(files).read(in);
            whole &= findings.isPresent();
            findings.ifPresent(found -> sheets.add(new SheetFacts(path, order, letters, fit, found)));
        }
        return whole ? Optional.of(List.copyOf(sheets)) : Optional.empty();
    }

    private Optional<FitRow> row(ResultReader in) {
        String guide = in.text();
        String paper = in.text();
        int panel = in.number();
        String section = in.text();
        double used = in.fraction();
        double size = in.fraction();
        double leading = in.fraction();
        List<FitRow.Form> forms = new ArrayList<>();
        for (int left = in.count(); left > 0; left--) {
            forms.add(new FitRow.Form(in.text(), in.number() == 1));
        }
        if (in.number() == 0) {
            return Optional.of(new FitRow(guide, paper, panel, section, used, size, leading, forms, Optional.empty()));
        }
        String entry = in.text();
        String field = in.text();
        SourceFile file = files.get(in.text());
        int start = in.number();
        int end = in.number();
        int lines = in.number();
        return Optional.ofNullable(file).map(known -> new FitRow(guide, paper, panel, section, used, size, leading,
                forms, Optional.of(new FitRow.Over(entry, field, new Span(known, start, end), lines))));
    }
}
