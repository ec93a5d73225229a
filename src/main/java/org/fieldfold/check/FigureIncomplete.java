package org.fieldfold.check;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.FigureNote;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/** A figure has words for those who cannot see it, a maker, a licence, and for a life stage its true size. */
final class FigureIncomplete implements Rule {
    @Override
    public String id() {
        return "figure-incomplete";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (Placed<Figure> placed : base.figures().values()) {
            FigureNote note = placed.value().note();
            require(note.alt().map(String::strip).filter(words -> words.length() > 10),
                    "words for those who cannot see it", "alt: in a sentence", placed, found);
            require(note.credit(), "who made it", "credit:", placed, found);
            require(note.licence(), "a licence", "licence:", placed, found);
            if (note.shows().stage().isPresent()) {
                require(note.trueSize(), "the true size of the stage it shows",
                        "true-size: {from: 9, to: 11}", placed, found);
            }
        }
    }

    private void require(Optional<?> fact, String what, String how, Placed<Figure> placed,
            Consumer<Finding> found) {
        if (fact.isEmpty()) {
            found.accept(Finding.error(placed.at("caption"), id(), "expected " + what + " for figure '"
                    + placed.value().id() + "', found none", "add '" + how + "'"));
        }
    }
}
