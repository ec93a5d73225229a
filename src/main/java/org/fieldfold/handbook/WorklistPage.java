package org.fieldfold.handbook;

import java.time.LocalDate;
import java.util.List;
import org.fieldfold.edition.Job;
import org.fieldfold.edition.Worklist;
import org.fieldfold.entry.Edition;

/** For the specialist: what is still to be done before the edition is issued, by reviewer and by risk. */
public final class WorklistPage {
    private final Markup out = new Markup();

    private WorklistPage() {
    }

    /** The page as a file, self-contained and without script. */
    public static byte[] write(Edition edition, Worklist worklist, boolean proof) {
        WorklistPage page = new WorklistPage();
        ReviewHead.open(page.out, edition, "Worklist", "What is to be done before edition " + edition.year()
                + " is issued: by reviewer, and what could hurt a reader most first.", proof);
        page.progress(worklist);
        worklist.byReviewer().forEach(page::reviewer);
        page.out.close().close();
        return new Frame("en").inline("Worklist of edition " + edition.year(),
                Sheet.read("handbook.css") + Sheet.read("review.css"), page.out.toString());
    }

    private void progress(Worklist worklist) {
        int signed = worklist.entries() - worklist.unsigned();
        String words = signed + " of " + worklist.entries() + " entries are signed";
        out.open("p").element("strong", words + ". ").text(worklist.byHand() == 0 ? ""
                : worklist.byHand() + " of them by hand, so that a later edit is not found. ")
                .open("meter", "min", "0", "max",
                String.valueOf(Math.max(1, worklist.entries())), "value", String.valueOf(signed),
                "aria-label", words).close().close().line();
    }

    private void reviewer(String name, List<Job> jobs) {
        out.open("section", "class", "part").element("h2", name + " (" + jobs.size() + ")").open("table")
                .element("caption", "Gravest first").open("thead").open("tr");
        for (String column : List.of("Entry", "Last read", "Why", "To do")) {
            out.element("th", column, "scope", "col");
        }
        out.close().close().open("tbody").line();
        for (Job job : jobs) {
            out.open("tr", "class", job.unsigned() ? "tight" : "easy").open("td").text(job.name()).empty("br")
                    .element("span", job.file(), "class", "at").close();
            out.element("td", job.lastRead().map(LocalDate::toString).orElse("never"), "class", "brief").open("td");
            out.open("ul");
            job.reasons().forEach(why -> out.element("li", why.sentence()));
            out.close().close();
            out.element("td", job.unsigned() ? "re-read, sign" : "look", "class", "brief").close().line();
        }
        out.close().close().close().line();
    }
}
