package org.fieldfold.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;

/** The shipped handbook in a browser, as on a telephone without signal: nothing is asked for, nothing breaks. */
abstract class OnAPhone {
    @TempDir
    static Path folder;
    static Path one;
    static Phone phone;

    @BeforeAll
    static void open() throws IOException {
        phone = Phone.open();
        Shipped.write(folder, Shipped.FILES);
        one = folder.resolve("handbook.en.html");
    }

    @AfterAll
    static void nothingWasAskedFor() throws IOException {
        if (phone != null) {
            List<String> asked = phone.end();
            phone.close();
            assertEquals(List.of(), asked);
        }
    }

    @AfterEach
    void nothingBroke() {
        assertEquals(List.of(), phone.complaints());
    }
}
