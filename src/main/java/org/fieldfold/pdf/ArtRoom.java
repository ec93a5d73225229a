package org.fieldfold.pdf;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.fieldfold.typeset.FigureShapes;

/** All figures of a publication. Each is made into artwork at its first use, and kept. */
final class ArtRoom implements FigureShapes {
    private final Map<String, SquareCodePattern> squareCodes = new ConcurrentHashMap<>();
    private final Map<String, byte[]> contents;
    private final Map<String, Figure> figures = new ConcurrentHashMap<>();
    private final Map<String, Artwork> artwork = new ConcurrentHashMap<>();

    private final ArtStore store;

    ArtRoom(Map<String, byte[]> contents, ArtStore store) {
        this.contents = new TreeMap<>(contents);
        this.store = store;
    }

    @Override
    public double aspect(String figure) {
        return figure(figure).aspect();
    }

    Artwork artwork(String figure) {
        return artwork.computeIfAbsent(figure, id -> render(id, figure(id)));
    }

    private Artwork render(String id, Figure figure) {
        Artwork art = figure.render();
        if (figure instanceof VectorFigure) {
            new KnownDrawing(figure.aspect(), art).bytes().ifPresent(bytes -> store.keep(id, bytes));
        }
        return art;
    }

    private Figure figure(String id) {
        byte[] content = contents.get(id);
        if (content == null) {
            throw new IllegalArgumentException("expected one of the " + contents.size() + " figures, found '"
                    + id + "'");
        }
        return figures.computeIfAbsent(id, key -> store.known(key).flatMap(KnownDrawing::of)
                .orElseGet(() -> Figure.of(key, content)));
    }

    /** Why figures cannot be printed, by their ids: every drawing is made into artwork, every picture is read. */
    SortedMap<String, String> problems() {
        Map<String, String> problems = new ConcurrentHashMap<>();
        Map<Boolean, List<String>> pictures = contents.keySet().stream().collect(Collectors.partitioningBy(
                id -> RasterFigure.recognises(contents.get(id))));
        pictures.get(false).parallelStream().forEach(id -> attempt(id, () -> artwork(id), problems));
        // one by one: the dots of a large one take 160 MB while it is read
        pictures.get(true).forEach(id -> attempt(id, () -> figure(id), problems));
        return new TreeMap<>(problems);
    }

    private static void attempt(String id, Runnable work, Map<String, String> problems) {
        try {
            work.run();
        } catch (RuntimeException unprintable) {
            // of the drawing library too, which throws whatever it comes upon
            problems.put(id, String.valueOf(unprintable.getMessage()));
        }
    }

    /** The pattern of an address, which is the same on all copies. */
    SquareCodePattern squareCode(String address) {
        return squareCodes.computeIfAbsent(address, SquareCodePattern::of);
    }
}
