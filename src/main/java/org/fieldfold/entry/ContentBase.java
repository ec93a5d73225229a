package org.fieldfold.entry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import org.fieldfold.fold.FoldScheme;
import org.fieldfold.fold.FoldSchemes;
import org.fieldfold.source.Span;

/**
 * Everything that is known, each record with its place. Maps are sorted by id, or for readers by name.
 *
 * @param schemes the fold schemes of this base; empty for one whose file was found but not understood
 * @param unread ids of entries whose file was found but not understood, with its first span: a guide that
 *     lists one says so instead of leaving it out
 * @param translations texts in other languages, by language
 */
public record ContentBase(
        Placed<Edition> edition,
        SortedMap<String, Placed<Crop>> crops,
        SortedMap<String, Placed<ActiveIngredient>> materials,
        SortedMap<String, Placed<Source>> sources,
        SortedMap<String, Placed<Price>> prices,
        SortedMap<String, Placed<PestEntry>> pests,
        SortedMap<String, Placed<NaturalEnemy>> enemies,
        SortedMap<String, Placed<Practice>> practices,
        SortedMap<String, Placed<Guide>> guides,
        SortedMap<String, Placed<Office>> offices,
        SortedMap<String, Placed<Figure>> figures,
        SortedMap<String, Placed<Chapter>> chapters,
        SortedMap<String, Placed<Station>> stations,
        SortedMap<String, Optional<FoldScheme>> schemes,
        SortedMap<String, Span> unread,
        SortedMap<String, Translation> translations) {
    /**
     * The drawings of a pest or natural enemy: those it lists, or those that show it. Of these the first
     * stage stands first and damage next, as that is how most are found; further stages follow.
     *
     * @param stages in the order in which a scout meets them
     */
    public List<Figure> figuresOf(String entry, List<String> listed, List<StageDescription> stages) {
        if (!listed.isEmpty()) {
            return listed.stream().filter(figures::containsKey).map(id -> figures.get(id).value()).toList();
        }
        return figures.values().stream().map(Placed::value)
                .filter(figure -> figure.note().shows().entry().equals(entry))
                .sorted(Comparator.comparing((Figure figure) -> place(figure, stages))
                        .thenComparing(Figure::id))
                .toList();
    }

    private static int place(Figure figure, List<StageDescription> stages) {
        if (figure.note().shows().showsDamage()) {
            return 1;
        }
        for (int i = 0; i < stages.size(); i++) {
            if (figure.note().shows().stage().filter(stages.get(i).stage()::equals).isPresent()) {
                return i == 0 ? 0 : i + 1;
            }
        }
        return Integer.MAX_VALUE;
    }

    /** The fold scheme with this id, of this base or of those that are always there. */
    public Optional<FoldScheme> scheme(String id) {
        return schemes.getOrDefault(id, FoldSchemes.find(id));
    }

    /** All that is re-read every winter: pests, natural enemies, practices. */
    public List<Placed<? extends Reviewed>> reviewed() {
        List<Placed<? extends Reviewed>> all = new ArrayList<>(pests.values());
        all.addAll(enemies.values());
        all.addAll(practices.values());
        return all;
    }
}
