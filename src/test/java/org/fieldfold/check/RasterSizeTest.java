package org.fieldfold.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sizes of images that the JDK's own encoders wrote. */
class RasterSizeTest {
    @ParameterizedTest
    @CsvSource({"png,1,1", "png,600,402", "png,70000,3", "jpg,1,1", "jpg,600,402", "jpg,3,1025"})
    void readsWhatWasWritten(String format, int width, int height) throws IOException {
        assertEquals(Optional.of(new RasterSize(width, height)), RasterSize.of(image(format, width, height)));
    }

    @ParameterizedTest
    @CsvSource({"png", "jpg"})
    void anImageCutAnywhereIsReadOrRefused(String format) throws IOException {
        byte[] whole = image(format, 30, 20);
        for (int length = 0; length < whole.length; length++) {
            RasterSize.of(Arrays.copyOf(whole, length)).ifPresent(size -> assertEquals(new RasterSize(30,
                    20), size));
        }
    }

    @Test
    void otherBytesHaveNoSize() {
        assertEquals(Optional.empty(), RasterSize.of(new byte[100]));
        assertEquals(Optional.empty(), RasterSize.of("<svg/>".getBytes(
                java.nio.charset.StandardCharsets.UTF_8)));
    }

    private static byte[] image(String format, int width, int height) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), format, bytes);
        return bytes.toByteArray();
    }
}
