package org.fieldfold.pdf;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
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
    private final TypeCase type = new TypeCase();
    private final Frozen colour = Streams.colourProfile();
    private final ArtRoom art;
    private final Map<Plate.Key, Plate> plates = new ConcurrentHashMap<>();
    private volatile Optional<FrozenType> frozen = Optional.empty();

    private Press(ArtRoom art) {
        this.art = art;
    }

    /**
     * A press with these figures: drawings in SVG, pictures in PNG or JPEG, told apart by what they contain.
     *
     * @throws IllegalArgumentException for a figure that cannot be printed, saying which, where and why
     */
    public static Press of(Map<String, byte[]> figures) {
        return new Press(new ArtRoom(figures));
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
        plates.clear();
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
                : plates.computeIfAbsent(Plate.Key.of(job), unseen -> Plate.of(job, cut, art, colour));
        Sheet sheet = Sheet.draw(job, cut, art, plate);
        return SheetFile.write(sheet);
    }
}
