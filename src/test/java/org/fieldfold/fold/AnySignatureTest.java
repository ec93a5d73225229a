package org.fieldfold.fold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Sheets folded in half again and again, any way, and trimmed all around: books of 2 to 32 pages. */
class AnySignatureTest {
    @Provide
    Arbitrary<FoldScheme> signatures() {
        return Combinators.combine(Arbitraries.integers().between(0, 2), Arbitraries.integers().between(0, 2),
                Arbitraries.of(FoldScheme.Head.values()),
                Arbitraries.integers().between(0, 7).list().ofSize(4)).as(AnySignatureTest::signature)
                .filter(scheme -> !scheme.steps().isEmpty());
    }

    private static FoldScheme signature(int across, int down, FoldScheme.Head head, List<Integer> choices) {
        List<FoldStep> steps = new ArrayList<>();
        int columns = 1 << across;
        int rows = 1 << down;
        int width = columns;
        int height = rows;
        for (int choice : choices) {
            boolean upright = width > 1 && (height == 1 || choice % 2 == 0);
            if (upright || height > 1) {
                // the middle line of what is left; one that lies on it is folded with it
                int middle = (upright ? width : height) / 2;
                Part part = upright ? choice / 2 % 2 == 0 ? Part.LEFT : Part.RIGHT
                        : choice / 2 % 2 == 0 ? Part.TOP : Part.BOTTOM;
                steps.add(new FoldStep.Folds(List.of(new Fold(
                        new GridLine(upright ? Axis.UPRIGHT : Axis.LEVEL, middle), part, choice / 4 == 0))));
                width = upright ? width / 2 : width;
                height = upright ? height : height / 2;
            }
        }
        return new FoldScheme("book", "Book", true, Collections.nCopies(columns, 1),
                Collections.nCopies(rows, 1), false, true, head, steps, List.of(),
                List.of(FoldScheme.Head.values()));
    }

    @Property(tries = 300)
    void everyPageIsReadOnceAndLeavesHaveTwoSides(@ForAll("signatures") FoldScheme scheme) {
        List<ReadFace> order = Leafing.read(FoldedSheet.of(scheme));
        int panels = scheme.columns().size() * scheme.rows().size();
        assertEquals(2 * panels, order.size());
        Set<Face> faces = new HashSet<>();
        order.forEach(read -> faces.add(read.face()));
        assertEquals(2 * panels, faces.size());
        assertEquals(PanelRole.COVER, order.get(0).role());
        assertEquals(PanelRole.LAST, order.get(order.size() - 1).role());
        for (int page = 0; page < order.size(); page += 2) {
            // pages 1 and 2, 3 and 4 and so on are the two sides of one leaf
            assertEquals(order.get(page).face().cell(), order.get(page + 1).face().cell());
            assertNotEquals(order.get(page).face().upper(), order.get(page + 1).face().upper());
        }
        // a page lies opposite one that was on the same side of the sheet: the fold closes like on like
        for (int page = 1; page + 1 < order.size(); page += 2) {
            assertEquals(order.get(page).face().upper(), order.get(page + 1).face().upper());
        }
    }
}
