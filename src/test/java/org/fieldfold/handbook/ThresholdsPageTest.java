package org.fieldfold.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Every threshold with its source, and where two sources answer the same question differently. */
class ThresholdsPageTest {
    private static final Document PAGE = Html.parse(new HandbookFile("review/thresholds.html",
            ThresholdsPage.write(Shipped.BASE, false)));

    private static List<String> row(String pest, String id) {
        Element section = Html.all(PAGE, "section").stream()
                .filter(one -> Html.all(one, "h2").get(0).getTextContent().equals(pest)).findFirst().orElseThrow();
        return Html.all(section, "tr").stream().map(row -> Html.all(row, "td").stream()
                .map(Element::getTextContent).toList()).filter(cells -> !cells.isEmpty() && cells.get(0).equals(id))
                .findFirst().orElseThrow();
    }

    @Test
    void listsEveryThresholdOfTheBase() {
        assertEquals(Shipped.BASE.pests().values().stream().mapToInt(pest -> pest.value().thresholds().size()).sum(),
                Html.all(PAGE, "tbody").stream().mapToInt(body -> Html.all(body, "tr").size()).sum());
    }

    @Test
    void saysNumberPlaceAndSource() {
        assertEquals(List.of("first", "onion, before the first treatment, BBCH 12–48; field, tunnel",
                "1 thrips per leaf"),
                row("onion thrips", "first").subList(0, 3));
        assertTrue(row("onion thrips", "first").get(3).startsWith("Cornell"), row("onion thrips", "first").get(3));
    }

    /** The demo's two extension services differ on asparagus beetle eggs: 2 and 20 % (sources-disagree). */
    @Test
    void saysWhereSourcesDisagreeAndWhichIsPrinted() {
        String cell = row("common asparagus beetle", "eggs-ontario").get(2);
        assertTrue(cell.startsWith("20 ") && cell.contains("'eggs' says 2 ")
                && cell.endsWith("the pocket prints that one, the handbook both"), cell);
        assertEquals(-1, row("common asparagus beetle", "eggs").get(2).indexOf("says"));
    }
}
