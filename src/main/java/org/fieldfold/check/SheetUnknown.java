package org.fieldfold.check;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.Placed;
import org.fieldfold.fold.FoldScheme;
import org.fieldfold.fold.FoldSchemes;
import org.fieldfold.fold.Paper;
import org.fieldfold.source.Finding;

/** Papers and fold schemes are those that can be printed and folded. */
final class SheetUnknown implements Rule {
    private static final List<String> PAPERS = Arrays.stream(Paper.values()).map(Paper::id).toList();

    @Override
    public String id() {
        return "sheet-unknown";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        papers(base.edition(), base.edition().value().papers(), found);
        base.offices().values().forEach(office -> paper(office, office.value().paper(), found, "paper"));
        List<String> schemes = FoldSchemes.all().stream().map(FoldScheme::id).toList();
        for (Placed<Guide> guide : base.guides().values()) {
            papers(guide, guide.value().papers(), found);
            if (!schemes.contains(guide.value().scheme())) {
                found.accept(Finding.error(guide.at("scheme"), id(), "expected a fold scheme ("
                        + String.join(", ", schemes) + "), found '" + guide.value().scheme() + "'",
                                "letter and accordion-4 are the usual ones"));
            }
        }
    }

    private void papers(Placed<?> placed, List<String> papers, Consumer<Finding> found) {
        for (int i = 0; i < papers.size(); i++) {
            paper(placed, papers.get(i), found, "papers", i);
        }
    }

    private void paper(Placed<?> placed, String paper, Consumer<Finding> found, Object... path) {
        if (!PAPERS.contains(paper)) {
            found.accept(Finding.error(placed.at(path), id(), "expected a paper (" + String.join(", ", PAPERS)
                    + "), found '" + paper + "'", "write it in small letters"));
        }
    }
}
