package org.fieldfold.manuscript;

import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;

/** Which drawing stands for a crop where crops are chosen from: of one of its pests, and no two the same. */
public final class CropFigures {
    private CropFigures() {
    }

    /**
     * Ids of figures by ids of crops, in the order of the crops and the same in every language. An animal comes
     * before damage, and damage before a drawing that stands for another crop already; a crop without any drawing is
     * left out.
     */
    public static Map<String, String> of(ContentBase base) {
        Map<String, String> chosen = new LinkedHashMap<>();
        Set<String> taken = new HashSet<>();
        for (String crop : base.crops().keySet().stream().sorted().toList()) {
            List<String> wanted = wanted(base, crop);
            wanted.stream().filter(taken::add).findFirst().or(() -> wanted.stream().findFirst())
                    .ifPresent(figure -> chosen.put(crop, figure));
        }
        Map<String, String> inOrder = new LinkedHashMap<>();
        base.crops().keySet().stream().filter(chosen::containsKey).forEach(crop -> inOrder.put(crop, chosen.get(crop)));
        return inOrder;
    }

    private static List<String> wanted(ContentBase base, String crop) {
        List<List<Figure>> figures = base.pests().values().stream().map(Placed::value)
                .filter(pest -> pest.crops().contains(crop)).sorted(Comparator.comparing(PestEntry::id))
                .map(pest -> figures(base, pest)).toList();
        return Stream.concat(figures.stream().flatMap(all -> first(all, false)),
                figures.stream().flatMap(all -> first(all, true))).map(Figure::id).toList();
    }

    private static Stream<Figure> first(List<Figure> figures, boolean damage) {
        return figures.stream().filter(figure -> figure.note().shows().showsDamage() == damage).limit(1);
    }

    private static List<Figure> figures(ContentBase base, PestEntry pest) {
        return base.figuresOf(pest.id(), pest.figures(), pest.stages());
    }
}
