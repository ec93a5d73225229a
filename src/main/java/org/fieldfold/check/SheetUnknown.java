package org.fieldfold.check;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.Placed;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.FoldException;
import org.fieldfold.fold.FoldScheme;
import org.fieldfold.fold.FoldSchemes;
import org.fieldfold.fold.Imposition;
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
        SortedSet<String> schemes = new TreeSet<>(base.schemes().keySet());
        FoldSchemes.all().forEach(scheme -> schemes.add(scheme.id()));
        for (Placed<Guide> guide : base.guides().values()) {
            papers(guide, guide.value().papers(), found);
            if (!schemes.contains(guide.value().scheme())) {
                found.accept(Finding.error(guide.at("scheme"), id(), "expected a fold scheme ("
                        + String.join(", ", schemes) + "), found '" + guide.value().scheme() + "'",
                                "letter and accordion-4 are the usual ones; one of your own is a file "
                                        + "schemes/<id>.fold"));
            }
            base.scheme(guide.value().scheme()).ifPresent(scheme -> tooSmall(guide, scheme,
                    base.edition().value().papers(), found));
        }
    }

    /** A scheme of many panels may need a larger paper. */
    private void tooSmall(Placed<Guide> guide, FoldScheme scheme, List<String> usual,
            Consumer<Finding> found) {
        List<String> own = guide.value().papers();
        List<String> papers = own.isEmpty() ? usual : own;
        for (int i = 0; i < papers.size(); i++) {
            if (PAPERS.contains(papers.get(i))) {
                try {
                    Imposition.of(scheme, Paper.named(papers.get(i)), FlipEdge.SHORT);
                } catch (FoldException e) {
                    found.accept(Finding.error(own.isEmpty() ? guide.at("scheme") : guide.at("papers", i),
                            id(), "expected a paper on which every panel has room, found that " + e.reason(),
                            "take a larger paper, or a scheme with fewer panels"));
                }
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
