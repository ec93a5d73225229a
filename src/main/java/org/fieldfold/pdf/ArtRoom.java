package org.fieldfold.pdf;

import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.fieldfold.typeset.FigureShapes;

/** All figures of a publication. Each is made into artwork at its first use, and kept. */
final class ArtRoom implements FigureShapes {
    private final Map<String, SquareCodePattern> squareCodes = new ConcurrentHashMap<>();
    private final Map<String, byte[]> contents;
    private final Map<String, Figure> figures = new ConcurrentHashMap<>();
    private final Map<String, Artwork> artwork = new ConcurrentHashMap<>();

    ArtRoom(Map<String, byte[]> contents) {
        this.contents = new TreeMap<>(contents);
    }

    @Override
    public double aspect(String figure) {
        return figure(figure).aspect();
    }

    Artwork artwork(String figure) {
        return artwork.computeIfAbsent(figure, id -> figure(id).render());
    }

    private Figure figure(String id) {
        byte[] content = contents.get(id);
        if (content == null) {
            throw new IllegalArgumentException("expected one of the " + contents.size() + " figures, found '"
                    + id + "'");
        }
        return figures.computeIfAbsent(id, key -> Figure.of(key, content));
    }

    /** Why figures cannot be printed, by their ids: every drawing is made into artwork, every picture is read. */
    SortedMap<String, String> problems() {
        Map<String, String> problems = new ConcurrentHashMap<>();
        contents.keySet().parallelStream().forEach(id -> {
            try {
                if (figure(id) instanceof VectorFigure) {
                    artwork(id);
                }
            } catch (RuntimeException unprintable) {
                // of the drawing library too, which throws whatever it comes upon
                problems.put(id, String.valueOf(unprintable.getMessage()));
            }
        });
        return new TreeMap<>(problems);
    }

    /** The pattern of an address, which is the same on all copies. */
    SquareCodePattern squareCode(String address) {
        return squareCodes.computeIfAbsent(address, SquareCodePattern::of);
    }
}
