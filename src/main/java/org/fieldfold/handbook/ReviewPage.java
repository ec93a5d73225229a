package org.fieldfold.handbook;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.fieldfold.edition.Rereadings;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Reviewed;
import org.fieldfold.report.FitRow;
import org.fieldfold.source.Finding;
import org.fieldfold.source.FindingPrinter;
import org.fieldfold.source.Severity;

/** What the specialist reads after a build: findings, how every panel fits, and which entries are due. */
public final class ReviewPage {
    /** From this share of its panel on a section is close to being too long. */
    private static final double TIGHT = 0.97;

    private final ContentBase base;
    private final Rereadings rereadings;
    private final Markup out = new Markup();

    private ReviewPage(ContentBase base, Rereadings rereadings) {
        this.base = base;
        this.rereadings = rereadings;
    }

    /**
     * The page as a file, self-contained and without script.
     *
     * @param rereadings of the base
     * @param proof whether the build was made although findings of severity error stand
     */
    public static byte[] write(ContentBase base, Rereadings rereadings, List<Finding> findings, List<FitRow> fit,
            boolean proof) {
        Edition edition = base.edition().value();
        ReviewPage page = new ReviewPage(base, rereadings);
        page.out.open("main").line().open("article", "class", "page k-review").line();
        page.head(edition, findings, fit, proof);
        page.findings("findings", "To mend", findings.stream()
                .filter(finding -> finding.severity() != Severity.INFO).toList());
        page.fit(fit);
        page.due(edition);
        page.findings("notes", "To know", findings.stream()
                .filter(finding -> finding.severity() == Severity.INFO).toList());
        page.out.close().close();
        return new Frame("en").inline("Review of edition " + edition.year(), Sheet.read("handbook.css")
                + Sheet.read("review.css"), page.out.toString());
    }

    private void head(Edition edition, List<Finding> findings, List<FitRow> fit, boolean proof) {
        out.open("div", "class", "head").element("span", "Review", "class", "up")
                .open("span", "class", "edition");
        if (proof) {
            out.element("strong", "PROOF", "class", "proof").text(" ");
        }
        out.text("Edition " + edition.year() + " · until " + edition.validUntil()).close().close().line();
        out.element("h1", "Review of edition " + edition.year(), "class", "title");
        out.element("p", edition.title(), "class", "beneath").line();
        out.open("p").element("a", "What changed since the last edition", "href", "changes.html").text(" · ")
                .element("a", "Worklist", "href", "worklist.html").text(" · ")
                .element("a", "Plain language", "href", "reading.html").text(" · ")
                .element("a", "Thresholds and their sources", "href", "thresholds.html").text(" · ")
                .element("a", "Plans, samples and prices", "href", "numbers.html").text(" · ")
                .element("a", "Figures and their release", "href", "figures.html").text(" · ")
                .element("a", "Dates of the calendar", "href", "weeks.html").close().line();
        out.open("dl");
        fact("Findings", FindingPrinter.summary(findings));
        long over = fit.stream().filter(row -> row.used() > 1).count();
        fact("Panels", fit.size() + " set, " + over + " too full");
        fact("Entries", base.reviewed().size() + ", of which " + rereadings.due() + " are due");
        edition.notice().ifPresent(notice -> fact("Notice", notice.full().words()));
        out.close().line();
    }

    private void fact(String name, String words) {
        out.element("dt", name).element("dd", words);
    }

    private void findings(String id, String name, List<Finding> findings) {
        part(id, name);
        Map<String, List<Finding>> byFile = new LinkedHashMap<>();
        findings.stream().sorted().forEach(finding -> byFile.computeIfAbsent(finding.span().file().path(),
                path -> new ArrayList<>()).add(finding));
        if (byFile.isEmpty()) {
            out.element("p", "Nothing was found.");
        }
        byFile.forEach((path, ofFile) -> {
            out.element("h3", path, "class", "file").open("ul", "class", "findings").line();
            ofFile.forEach(this::finding);
            out.close().line();
        });
        out.close().line();
    }

    private void finding(Finding finding) {
        out.open("li", "class", finding.severity().word()).element("b", finding.severity().word()).text(" ")
                .element("span", finding.span().line() + ":" + finding.span().column(), "class", "at")
                .text(" ").element("span", finding.message()).text(" ").element("code", finding.rule());
        if (!finding.hint().isEmpty()) {
            out.element("p", finding.hint(), "class", "hint");
        }
        out.close().line();
    }

    private void fit(List<FitRow> fit) {
        part("fit", "How the panels fit");
        if (fit.isEmpty()) {
            out.element("p", "No foldout was set.");
        } else {
            List<FitRow> over = fit.stream().filter(row -> row.used() > 1).toList();
            if (!over.isEmpty()) {
                panels("Too full", over);
            }
            guides(fit);
            out.open("details").element("summary", "All " + fit.size() + " panels");
            panels("Fullest first in each guide", fit);
            out.close();
        }
        out.close().line();
    }

    /** A line a foldout; large print and posters take what they need. */
    private void guides(List<FitRow> fit) {
        Map<String, List<FitRow>> foldouts = new TreeMap<>();
        fit.stream().filter(row -> !row.paper().contains(",")).forEach(row -> foldouts.computeIfAbsent(row.guide()
                + " " + row.paper(), none -> new ArrayList<>()).add(row));
        table("Each foldout", "Guide", "Paper", "Panels", "Fullest", "Type", "Texts in their short form");
        foldouts.values().forEach(rows -> {
            FitRow fullest = rows.stream().max(Comparator.comparingDouble(FitRow::used)).orElseThrow();
            out.open("tr", "class", fullest.used() > 1 ? "over" : "easy");
            cell(fullest.guide());
            cell(fullest.paper());
            cell(String.valueOf(rows.stream().map(FitRow::panel).distinct().count()));
            cell(fullest.section() + ", " + Math.round(fullest.used() * 100) + " %");
            brief(decimal(fullest.typeSize()) + " pt");
            cell(String.valueOf(rows.stream().mapToInt(FitRow::brief).sum()));
            out.close().line();
        });
        out.close().close();
    }

    private void panels(String caption, List<FitRow> fit) {
        table(caption, "Guide", "Paper", "Panel", "Section", "Filled", "Type", "Shortened");
        fit.stream().sorted(Comparator.comparing(FitRow::guide).thenComparing(FitRow::paper)
                .thenComparing(Comparator.comparingDouble(FitRow::used).reversed())
                .thenComparing(FitRow::panel)).forEach(this::fitRow);
        out.close().close();
    }

    private void fitRow(FitRow row) {
        out.open("tr", "class", row.used() > 1 ? "over" : row.used() >= TIGHT ? "tight" : "easy");
        cell(row.guide());
        cell(row.paper());
        cell(String.valueOf(row.panel()));
        cell(row.section());
        long percent = Math.round(row.used() * 100);
        out.open("td").text(percent + " %" + (row.over().map(over -> " – too much by " + over.lines()
                + " lines at " + over.field()).orElse(row.used() > 1 ? " – too much" : ""))).open("meter", "min", "0",
                "max", "1", "value", decimal(Math.min(1, row.used())), "aria-label", percent + " % filled")
                .close().close();
        brief(decimal(row.typeSize()) + " pt");
        cell(row.brief() == 0 ? "–" : row.forms().stream().filter(FitRow.Form::brief)
                .map(FitRow.Form::field).collect(Collectors.joining(", ")));
        out.close().line();
    }

    private static String decimal(double number) {
        return BigDecimal.valueOf(number).setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros().toPlainString();
    }

    private void due(Edition edition) {
        part("due", "Re-reading");
        table("Oldest first; due " + edition.maxAgeMonths() + " months after the last reading, measured on "
                + edition.issued(), "Entry", "File", "Last read", "By", "Due");
        base.reviewed().stream()
                .sorted(Comparator
                        .comparing((Placed<? extends Reviewed> entry) ->
                                entry.value().revised().orElse(LocalDate.MIN))
                        .thenComparing(entry -> entry.value().id()))
                .forEach(entry -> {
                    boolean due = rereadings.isDue(entry.value());
                    out.open("tr", "class", due ? "over" : "easy");
                    cell(entry.value().id());
                    cell(entry.spans().file().path());
                    brief(entry.value().revised().map(LocalDate::toString).orElse("never"));
                    brief(entry.value().reviser().orElse("–"));
                    cell(due ? "due" : "–");
                    out.close().line();
                });
        out.close().close().close().line();
    }

    private void part(String id, String name) {
        out.open("section", "class", "part", "id", id).element("h2", name).line();
    }

    private void table(String caption, String... columns) {
        out.open("table").element("caption", caption).open("thead").open("tr");
        for (String column : columns) {
            out.element("th", column, "scope", "col");
        }
        out.close().close().open("tbody").line();
    }

    /** A cell that stays on its line. */
    private void brief(String words) {
        out.element("td", words, "class", "brief");
    }

    private void cell(String text) {
        out.element("td", text);
    }
}
