package org.fieldfold.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFStreamEngine;
import org.apache.pdfbox.contentstream.operator.state.Concatenate;
import org.apache.pdfbox.contentstream.operator.state.Restore;
import org.apache.pdfbox.contentstream.operator.state.Save;
import org.apache.pdfbox.contentstream.operator.state.SetMatrix;
import org.apache.pdfbox.contentstream.operator.text.BeginText;
import org.apache.pdfbox.contentstream.operator.text.EndText;
import org.apache.pdfbox.contentstream.operator.text.MoveText;
import org.apache.pdfbox.contentstream.operator.text.SetFontAndSize;
import org.apache.pdfbox.contentstream.operator.text.ShowText;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/** The letters of a printed file with the size that they really have on paper, artifacts and all. */
public final class PrintedType extends PDFStreamEngine {
    /**
     * One letter.
     *
     * @param page from 1
     * @param size in points, whatever the matrices on the way
     */
    public record Letter(int page, String text, double size, double x, double y) {}

    private final List<Letter> letters = new ArrayList<>();
    private int page;

    private PrintedType() {
        addOperator(new Concatenate(this));
        addOperator(new Save(this));
        addOperator(new Restore(this));
        addOperator(new BeginText(this));
        addOperator(new EndText(this));
        addOperator(new MoveText(this));
        addOperator(new SetMatrix(this));
        addOperator(new SetFontAndSize(this));
        addOperator(new ShowText(this));
    }

    public static List<Letter> of(byte[] pdf) throws IOException {
        PrintedType type = new PrintedType();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (PDPage page : document.getPages()) {
                type.page++;
                type.processPage(page);
            }
        }
        return type.letters;
    }

    @Override
    protected void showGlyph(Matrix matrix, PDFont font, int code, Vector displacement) {
        letters.add(new Letter(page, font.toUnicode(code), Math.abs(matrix.getScalingFactorY()),
                matrix.getTranslateX(), matrix.getTranslateY()));
    }
}
