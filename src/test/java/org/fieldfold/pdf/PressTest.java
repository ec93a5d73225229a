package org.fieldfold.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Paper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PressTest {
    @ParameterizedTest
    @CsvSource({"letter, LETTER, SHORT", "accordion-4, A4, LONG", "booklet-8, LETTER, SHORT", "map, A3, LONG"})
    void keepsBothStandards(String scheme, Paper paper, FlipEdge flip) {
        Imposition imposition = SampleGuide.imposition(scheme, paper, flip);
        assertEquals(List.of(), Conformance.failures(SampleGuide.print(SampleGuide.job(imposition))));
    }
}
