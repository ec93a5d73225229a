package org.fieldfold.pack;

import java.util.List;
import java.util.Optional;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.FoldScheme;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Paper;
import org.fieldfold.typeset.Face;
import org.fieldfold.typeset.TypeMetrics;

/** The page of an office with one guide, for all who judge it. */
public final class SampleCounter {
    static final TypeMetrics HALF_AN_EM = new TypeMetrics() {
        @Override
        public double width(Face face, String text) {
            return 500 * text.length();
        }

        @Override
        public boolean has(Face face, int codePoint) {
            return true;
        }

        @Override
        public double capHeight(Face face) {
            return 600;
        }
    };
    private static final Desk DESK = new Desk("Weir <& Sons> Office", "555-0199", "Mondays",
            List.of("Ada Weir", "bees"), "weir@marrowvalley.example", List.of("1 Weir", "Weir End"));

    private SampleCounter() {
    }

    /** An edition's sheets on letter paper, folded so. */
    public static String page(FoldScheme scheme, FlipEdge flip, String language) {
        Handout handout = new Handout("Leeks", List.of("leek", "onion"), List.of("leek moth", "onion thrips"),
                List.of(), List.of(), Imposition.of(scheme, Paper.LETTER, flip), Miniature.of(List.of(), "#123456",
                        HALF_AN_EM), List.of(new Handout.Copy("en", "leeks.en.letter.pdf", "", "poster.pdf",
                        "leeks.en.ics"),
                        new Handout.Copy("es", "leeks.es.letter.pdf", "", "", "")));
        return CounterPage.write(new CounterPage.Facts(DESK, 2027, "January 31, 2028", "first.pdf", "other.pdf",
                "letter", flip, Optional.empty(), false, List.of(handout)), PackWords.in(language));
    }
}
