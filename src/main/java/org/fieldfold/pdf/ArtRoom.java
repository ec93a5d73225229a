package org.fieldfold.pdf;

import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.fieldfold.typeset.FigureShapes;

/** All figures of a publication. Each is made into artwork at its first use, and kept. */
final class ArtRoom implements FigureShapes {
    private final Map<String, SquareCodePattern> squareCodes = new ConcurrentHashMap<>();
    private final Map<String, Figure> figures = new TreeMap<>();
    private final Map<String, Artwork> artwork = new ConcurrentHashMap<>();

    ArtRoom(Map<String, byte[]> contents) {
        new TreeMap<>(contents).forEach((id, content) -> figures.put(id, Figure.of(id, content)));
    }

    @Override
    public double aspect(String figure) {
        return figure(figure).aspect();
    }

    Artwork artwork(String figure) {
        return artwork.computeIfAbsent(figure, id -> figure(id).render());
    }

    private Figure figure(String id) {
        Figure found = figures.get(id);
        if (found == null) {
            throw new IllegalArgumentException("expected one of the " + figures.size() + " figures, found '"
                    + id + "'");
        }
        return found;
    }

    /** The pattern of an address, which is the same on all copies. */
    SquareCodePattern squareCode(String address) {
        return squareCodes.computeIfAbsent(address, SquareCodePattern::of);
    }
}
