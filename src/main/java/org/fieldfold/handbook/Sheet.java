package org.fieldfold.handbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The style sheets and pieces of script that ship with Fieldfold. */
final class Sheet {
    private Sheet() {
    }

    static String read(String name) {
        try (InputStream file = Sheet.class.getResourceAsStream(name)) {
            if (file == null) {
                throw new IllegalStateException(name + " is missing from the program");
            }
            return new String(file.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
