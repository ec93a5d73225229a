package org.fieldfold.fold;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PanelSizesTest {
    private static final double EXACT = 1e-9;

    /** Panel widths of the inside page, left to right. */
    private static double[] inside(String id, Paper paper) {
        return Imposition.of(FoldSchemes.named(id), paper, FlipEdge.SHORT).on(Side.BACK).stream()
                .mapToDouble(PanelSlot::width).toArray();
    }

    private static double[] inches(double... inches) {
        return Arrays.stream(inches).map(inch -> inch * 72).toArray();
    }

    private static double[] millimetres(double... mm) {
        return Arrays.stream(mm).map(Lengths::points).toArray();
    }

    @Test
    void letterFoldOnLetterIsThePrintersRule() {
        // C fold on 11 in: 3.6875 / 3.6875 / 3.625 in (ThoughtCo, 'C-Folds in Printing')
        assertArrayEquals(inches(3.6875, 3.6875, 3.625),
                inside("letter", Paper.LETTER), EXACT);
    }

    @Test
    void letterFoldOnA4() {
        // 297 mm: 100 / 100 / 97 mm (a printers' forum post; the sum is 297)
        assertArrayEquals(millimetres(100, 100, 97),
                inside("letter", Paper.A4), EXACT);
    }

    @Test
    void accordionPanelsAreEqual() {
        // an accordion (Z fold) has equal panels: common practice, no source
        for (int panels = 3; panels <= 6; panels++) {
            for (double width : inside("accordion-" + panels, Paper.LETTER)) {
                assertEquals(792.0 / panels, width, EXACT);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void panelsFillTheSheet(Paper paper) {
        for (FoldScheme scheme : FoldSchemes.all()) {
            Imposition sheet = Imposition.of(scheme, paper, FlipEdge.LONG);
            double area = sheet.on(Side.FRONT).stream().mapToDouble(s -> s.width() * s.height()).sum();
            assertEquals(sheet.sheetWidth() * sheet.sheetHeight(), area, 1e-3, scheme.id());
        }
    }

    @Test
    void eachFurtherNestedPanelIsNoWiderThanTheOneAroundIt() {
        // a roll of five: every turn closes around one more panel
        FoldScheme roll = FoldSchemes.read("roll.fold", """
                scheme roll
                title Roll of five
                sheet landscape
                columns 1 1 1 1 1
                rows 1
                fold x4 right over
                fold x3 right over
                fold x2 right over
                fold x1 left over
                """);
        for (Paper paper : Paper.values()) {
            List<PanelSlot> panels = Imposition.of(roll, paper, FlipEdge.SHORT).on(Side.BACK);
            assertEquals(panels.get(0).width(), panels.get(1).width(), EXACT);
            for (int k = 2; k < panels.size(); k++) {
                assertTrue(panels.get(k).width() <= panels.get(k - 1).width() - paper.tuck() + EXACT,
                        paper + ": panel " + (k + 1) + " of " + panels);
            }
        }
    }

    @Test
    void tuckedPanelsOfTheOtherFolds() {
        // both inner panels of a double parallel, both doors of a double gate, are narrower: common practice
        for (Paper paper : Paper.values()) {
            double[] parallel = inside("double-parallel", paper);
            assertEquals(parallel[0], parallel[1], EXACT);
            assertEquals(parallel[2], parallel[3], EXACT);
            assertTrue(parallel[2] <= parallel[1] - paper.tuck() + EXACT);
            double[] gate = inside("double-gate", paper);
            assertEquals(gate[1], gate[2], EXACT);
            assertEquals(gate[0], gate[3], EXACT);
            assertTrue(gate[0] <= gate[1] - paper.tuck() + EXACT);
            double[] doors = inside("gate", paper);
            assertTrue(doors[0] + doors[2] <= doors[1] - paper.tuck() + EXACT, "doors must not overlap");
        }
    }
}
