package org.fieldfold.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.Fold;
import org.fieldfold.fold.FoldLine;
import org.fieldfold.fold.FoldStep;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Part;
import org.fieldfold.fold.Side;

/** How a sheet is folded, in words, from its scheme. Folds are numbered as the marks on the sheet are. */
final class FoldingWords {
    private FoldingWords() {
    }

    /** The page that lies up before the first fold: on it the first part goes where the scheme says. */
    static Side up(Imposition sheet) {
        for (FoldStep step : sheet.scheme().steps()) {
            if (step instanceof FoldStep.Folds folds) {
                FoldLine.Move move = folds.folds().get(0).over() ? FoldLine.Move.OVER : FoldLine.Move.UNDER;
                return sheet.foldLines().stream().filter(line -> line.step() == 1 && line.move() == move)
                        .map(FoldLine::side).findFirst().orElse(Side.FRONT);
            }
        }
        return Side.FRONT;
    }

    /**
     * Whether the page that lies up stands on its head when the sheet lies as the scheme lays it: its reader
     * lays it the right way up. So it is with the back of a sheet that the printer turned like a sheet on a
     * block.
     */
    private static boolean isHeadOver(Imposition sheet) {
        boolean likeALeaf = sheet.flip() == FlipEdge.SHORT == sheet.sheetHeight() < sheet.sheetWidth();
        return up(sheet) == Side.BACK && !likeALeaf;
    }

    private static Part part(Fold fold, boolean headOver) {
        if (!headOver) {
            return fold.part();
        }
        return switch (fold.part()) {
            case LEFT -> Part.RIGHT;
            case RIGHT -> Part.LEFT;
            case TOP -> Part.BOTTOM;
            case BOTTOM -> Part.TOP;
        };
    }

    static List<String> of(Imposition sheet, PackWords words) {
        List<String> said = new ArrayList<>();
        said.add(words.say(up(sheet) == Side.FRONT ? "lay.front" : "lay.back"));
        if (!sheet.cuts().isEmpty()) {
            said.add(words.say("cut"));
        }
        boolean headOver = isHeadOver(sheet);
        int mark = 0;
        for (FoldStep step : sheet.scheme().steps()) {
            if (step instanceof FoldStep.Folds folds) {
                for (Fold fold : folds.folds()) {
                    mark++;
                    said.add(words.say("fold." + part(fold, headOver).name().toLowerCase(Locale.ROOT)
                            + (fold.over() ? ".over" : ".under"), mark));
                }
            } else {
                said.add(words.say("gather"));
            }
        }
        if (!sheet.scheme().trims().isEmpty()) {
            said.add(words.say("trim"));
        }
        said.add(words.say("done"));
        return said;
    }
}
