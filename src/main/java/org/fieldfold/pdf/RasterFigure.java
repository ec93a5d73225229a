package org.fieldfold.pdf;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/**
 * A picture in PNG or JPEG. A JPEG of one or three colours goes to paper as it is, any other is repacked. Its
 * dots are not kept: a base may have many.
 *
 * @param asItIs whether it goes to paper as it is
 */
record RasterFigure(String id, byte[] content, int width, int height, boolean asItIs) implements Figure {

    static boolean recognises(byte[] content) {
        return isJpeg(content) || content.length > 3 && content[0] == (byte) 0x89 && content[1] == 'P'
                && content[2] == 'N' && content[3] == 'G';
    }

    private static boolean isJpeg(byte[] content) {
        return content.length > 2 && content[0] == (byte) 0xff && content[1] == (byte) 0xd8;
    }

    static RasterFigure of(String id, byte[] content) {
        BufferedImage image = read(id, content);
        int colours = image.getColorModel().getNumColorComponents();
        return new RasterFigure(id, content, image.getWidth(), image.getHeight(),
                isJpeg(content) && (colours == 1 || colours == 3));
    }

    private static BufferedImage read(String id, byte[] content) {
        ImageIO.setUseCache(false);
        try {
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(content));
            if (image != null) {
                return image;
            }
        } catch (IOException | RuntimeException e) {
            throw new IllegalArgumentException("figure " + id
                    + ": expected a picture in PNG or JPEG (not CMYK),"
                    + " found one that does not read: " + e.getMessage(), e);
        }
        throw new IllegalArgumentException("figure " + id
                + ": expected a picture in PNG or JPEG, found neither");
    }

    @Override
    public double aspect() {
        return (double) width / height;
    }

    @Override
    public Artwork render() {
        try (PDDocument scratch = new PDDocument()) {
            PDImageXObject picture = asItIs ? JPEGFactory.createFromByteArray(scratch, content)
                    : LosslessFactory.createFromImage(scratch, plain(read(id, content)));
            return new Artwork(Frozen.of(picture.getCOSObject()), 1, 1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** On paper white and in sRGB, so that neither a colour profile nor an alpha channel is carried along. */
    private static BufferedImage plain(BufferedImage image) {
        BufferedImage plain = new BufferedImage(image.getWidth(), image.getHeight(),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D paper = plain.createGraphics();
        paper.setBackground(java.awt.Color.WHITE);
        paper.clearRect(0, 0, image.getWidth(), image.getHeight());
        paper.drawImage(image, 0, 0, null);
        paper.dispose();
        return plain;
    }
}
