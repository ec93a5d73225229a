package org.fieldfold.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;

class ColourProfileTest {
    @Test
    void theProfileThatShipsIsTheOneMadeHere() throws IOException {
        assertArrayEquals(ColourProfile.bytes(), Files.readAllBytes(ColourProfile.RESOURCE));
    }

    /**
     * The D50 matrix of sRGB as the ICC publishes it with its sRGB profiles, four places (value from memory).
     */
    @Test
    void primariesUnderD50() {
        double[][] expected = {{0.4360, 0.3851, 0.1431}, {0.2225, 0.7169, 0.0606}, {0.0139, 0.0971, 0.7141}};
        double[][] found = ColourProfile.adaptedPrimaries();
        for (int row = 0; row < 3; row++) {
            assertArrayEquals(expected[row], found[row], 0.0003);
        }
    }

    /** The colour engine of the JDK, with its own sRGB, as the second opinion. */
    @Test
    void coloursComeOutAsInTheRuntimesOwnSrgb() {
        ICC_Profile profile = ICC_Profile.getInstance(ColourProfile.bytes());
        assertEquals(3, profile.getNumComponents());
        ColorSpace ours = new ICC_ColorSpace(profile);
        for (float[] rgb : new float[][] {{0, 0, 0}, {1, 1, 1}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {.5f, .25f,
                .75f}, {.1f, .02f, .3f}, {.48f, .16f, .11f}}) {
            assertArrayEquals(rgb, ours.toRGB(rgb), 1.5f / 255);
        }
    }
}
