package org.fieldfold.handbook;

import java.util.List;
import java.util.Optional;
import org.fieldfold.edition.Change;
import org.fieldfold.edition.ChangeGroup;
import org.fieldfold.edition.Comparison;
import org.fieldfold.entry.Edition;

/** For the specialist: what changed since the last edition that was issued. */
public final class ChangesPage {
    private final Markup out = new Markup();

    private ChangesPage() {
    }

    /**
     * The page as a file, self-contained and without script.
     *
     * @param comparison empty when no edition was issued yet
     */
    public static byte[] write(Edition edition, Optional<Comparison> comparison, boolean proof) {
        ChangesPage page = new ChangesPage();
        ReviewHead.open(page.out, edition, "What changed", comparison.map(known -> "From " + known.from()
                + " to this one, fact by fact. Lines that moved and texts that were broken otherwise are no "
                + "change.").orElse("No edition was issued before this one: there is nothing to compare "
                + "with."), proof);
        comparison.ifPresent(page::changes);
        page.out.close().close();
        return new Frame("en").inline("What changed in edition " + edition.year(),
                Sheet.read("handbook.css") + Sheet.read("review.css"), page.out.toString());
    }

    private void changes(Comparison comparison) {
        if (comparison.changes().isEmpty()) {
            out.element("p", "No fact changed.").line();
            return;
        }
        for (ChangeGroup group : ChangeGroup.values()) {
            List<Change> changes = comparison.in(group);
            if (!changes.isEmpty()) {
                out.open("section", "class", "part", "id", group.word()).element("h2", group.heading()
                        + " (" + changes.size() + ")").open("ul", "class", "findings").line();
                for (Change change : changes) {
                    out.open("li").element("b", change.name()).text(": "
                            + change.what().replace(" -> ", " → ")).close().line();
                }
                out.close().close().line();
            }
        }
    }
}
