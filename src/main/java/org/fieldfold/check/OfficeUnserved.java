package org.fieldfold.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/** An office can print every guide that it hands out: on its paper, and in one of its languages. */
final class OfficeUnserved implements Rule {
    @Override
    public String id() {
        return "office-unserved";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        List<String> languages = base.edition().value().languages();
        for (Placed<Office> placed : base.offices().values()) {
            Office office = placed.value();
            if (office.languages().stream().noneMatch(languages::contains)) {
                found.accept(Finding.error(placed.at("languages"), id(),
                        "expected a language of this edition ("
                        + String.join(", ", languages) + "), found " + (office.languages().isEmpty() ? "none"
                        : String.join(", ", office.languages())),
                        "add one, or the language to edition.yaml"));
            }
            List<String> handed = office.guides().isEmpty() ? new ArrayList<>(base.guides().keySet())
                    : office.guides();
            for (int i = 0; i < handed.size(); i++) {
                Object[] path = office.guides().isEmpty() ? new Object[] {"paper"}
                        : new Object[] {"guides", i};
                Optional.ofNullable(base.guides().get(handed.get(i))).map(Placed::value)
                        .filter(guide -> !papers(guide, base).contains(office.paper()))
                        .ifPresent(guide -> found.accept(Finding.error(placed.at(path), id(),
                                "expected guide '"
                                + guide.id() + "' on the office's paper " + office.paper() + ", found it on "
                                + String.join(", ", papers(guide, base)),
                                "add " + office.paper() + " to 'papers:' of guides/" + guide.id()
                                + ".yaml, or take that key out there to print it on the papers of edition.yaml; or "
                                + "name under 'guides:' those that this office hands out")));
            }
        }
    }

    private static List<String> papers(Guide guide, ContentBase base) {
        return guide.papers().isEmpty() ? base.edition().value().papers() : guide.papers();
    }
}
