package org.fieldfold.kept;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class BundleTest {
    private static final int LARGE = 16 << 20;

    /** Of a base of any size it takes no more of the memory than 64 MiB. */
    @Test
    void whatIsTooMuchIsNotKept() throws IOException {
        Bundle bundle = new Bundle(new byte[0]);
        for (int i = 0; i < 4; i++) {
            bundle.put(name(i), new byte[LARGE]);
        }
        bundle.put(name(4), new byte[1]);
        assertTrue(bundle.get(name(3)).isPresent());
        assertEquals(Optional.empty(), bundle.get(name(4)));
        bundle.keepOnly(Set.of(name(0)));
        bundle.put(name(4), new byte[] {7});
        ByteArrayOutputStream written = new ByteArrayOutputStream();
        bundle.write(written);
        assertEquals(1.0, written.size() / (double) LARGE, 0.01);
        Bundle again = new Bundle(written.toByteArray());
        assertArrayEquals(new byte[] {7}, again.get(name(4)).orElseThrow());
        for (int i = 1; i < 3; i++) {
            again.put(name(i), new byte[LARGE]);
        }
        again.put(name(3), new byte[LARGE]);
        assertEquals(Optional.empty(), again.get(name(3)), "what was read counts");
    }

    private static String name(int number) {
        return String.valueOf(number).repeat(64);
    }
}
