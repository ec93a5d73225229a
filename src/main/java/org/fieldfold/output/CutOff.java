package org.fieldfold.output;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Builds that were cut off between the two renames of {@link OutputFolder#publish}. */
public final class CutOff {
    private CutOff() {
    }

    /**
     * Puts back what they left beside its place, whatever comes of the next build. What cannot be put back stays
     * for {@link OutputFolder#open} to say why.
     *
     * @param parent of folders of builds; need not be there
     */
    public static void putBack(Path parent) {
        try (DirectoryStream<Path> former = Files.newDirectoryStream(parent, ".*" + OutputFolder.FORMER)) {
            for (Path beside : former) {
                String hidden = beside.getFileName().toString();
                String name = hidden.substring(1, hidden.length() - OutputFolder.FORMER.length());
                if (!Files.exists(parent.resolve(name))) {
                    OutputFolder.open(parent, name).close();
                }
            }
        } catch (IOException | DirectoryIteratorException | SecurityException unmended) {
            // in use, or not to be written in
        }
    }
}
