package org.fieldfold.pdf;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import org.fieldfold.typeset.Face;
import org.fieldfold.typeset.FigureShapes;
import org.fieldfold.typeset.TypeMetrics;

/**
 * Prints sheets. Its type is cut down once to the characters of a publication and its figures are made into
 * artwork once; then any number of sheets may be printed, also at the same time. The same job gives the same
 * bytes.
 *
 * <p>A printed sheet is one page a side, tagged, and conforms to PDF/UA-1 (ISO 14289-1) and PDF/A-2a (ISO
 * 19005-2). It is read in the order of the panels' reading numbers, wherever they lie.
 */
public final class Press {
    /** More than the guides of a large region need; an office whose panels differ would leave one behind. */
    private static final int MOST_PLATES = 200;

    private final TypeCase type = new TypeCase();
    private final Frozen colour = Streams.colourProfile();
    private final ArtRoom art;
    private final Map<Plate.Key, Plate> plates = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Plate.Key, Plate> leastRecent) {
            return size() > MOST_PLATES;
        }
    };
    private volatile Optional<FrozenType> frozen = Optional.empty();

    private Press(ArtRoom art) {
        this.art = art;
    }

    /**
     * A press with these figures: drawings in SVG, pictures in PNG or JPEG, told apart by what they contain.
     * One that cannot be printed is refused where it is asked for; {@link #problems} knows it before.
     */
    public static Press of(Map<String, byte[]> figures) {
        return of(figures, ArtStore.NONE);
    }

    /** The same; a drawing that an earlier press has turned into paths is taken from there. */
    public static Press of(Map<String, byte[]> figures, ArtStore store) {
        return new Press(new ArtRoom(figures, store));
    }

    /**
     * Why figures cannot be printed, by their ids: the drawing library breaks on them, or they leave no ink.
     * It makes every drawing into artwork.
     */
    public SortedMap<String, String> problems() {
        return art.problems();
    }

    /** How wide its type runs; known before the type is frozen. */
    public TypeMetrics metrics() {
        return type;
    }

    /** A face as it ships, a TrueType file: to show on a screen what is set in it. */
    public static byte[] typeFile(Face face) {
        return TypeFile.bytes(face);
    }

    /** How wide its figures are for their height. */
    public FigureShapes shapes() {
        return art;
    }

    /**
     * Cuts the four faces down to these characters, for all sheets to come. A character that a face does not
     * have is passed over here, and refused where it is printed.
     */
    public void freeze(Set<Integer> codePoints) {
        synchronized (plates) {
            plates.clear();
        }
        frozen = Optional.of(FrozenType.cut(type, codePoints));
    }

    /**
     * Prints a sheet.
     *
     * @return a PDF of one page for each side that has panels
     * @throws IllegalStateException before {@link #freeze}
     * @throws IllegalArgumentException for a character without a glyph, a figure that there is not, a mark
     *     whose tag is not in the guide's tree
     */
    public byte[] print(PrintJob job) {
        FrozenType cut = frozen
                .orElseThrow(() -> new IllegalStateException("freeze the type before printing"));
        Plate plate = job.guide().shared().panels().isEmpty() ? Plate.of(job, cut, art, colour)
                : plate(job, cut);
        Sheet sheet = Sheet.draw(job, cut, art, plate);
        return SheetFile.write(sheet);
    }

    /** Two threads may draw the same plate at the same time; that is better than one waiting for any other. */
    private Plate plate(PrintJob job, FrozenType cut) {
        Plate.Key key = Plate.Key.of(job);
        synchronized (plates) {
            Plate known = plates.get(key);
            if (known != null) {
                return known;
            }
        }
        Plate drawn = Plate.of(job, cut, art, colour);
        synchronized (plates) {
            Plate earlier = plates.putIfAbsent(key, drawn);
            return earlier == null ? drawn : earlier;
        }
    }
}
