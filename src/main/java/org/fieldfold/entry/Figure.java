package org.fieldfold.entry;

/**
 * A drawing or photograph, from the {@code .yaml} beside it.
 *
 * @param file its path, as shown to people
 * @param bytes the file as it is
 * @param sha256 of these bytes
 */
public record Figure(String id, FigureNote note, String file, byte[] bytes, String sha256) {
    /** Whether it is an SVG drawing rather than a raster. */
    public boolean drawn() {
        return file.endsWith(".svg");
    }
}
