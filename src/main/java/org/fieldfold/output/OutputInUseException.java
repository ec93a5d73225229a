package org.fieldfold.output;

import java.io.IOException;
import java.nio.file.Path;

/** Another build is writing to the same folder. */
public final class OutputInUseException extends IOException {
    OutputInUseException(Path folder) {
        super("another build is writing to " + folder
                + "; wait until it is done, or give another --out folder");
    }
}
