package org.fieldfold.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fieldfold.fold.Fold;
import org.fieldfold.fold.FoldLine;
import org.fieldfold.fold.FoldStep;
import org.fieldfold.fold.Imposition;
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

    static List<String> of(Imposition sheet, PackWords words) {
        List<String> said = new ArrayList<>();
        said.add(words.say(up(sheet) == Side.FRONT ? "lay.front" : "lay.back"));
        if (!sheet.cuts().isEmpty()) {
            said.add(words.say("cut"));
        }
        int mark = 0;
        for (FoldStep step : sheet.scheme().steps()) {
            if (step instanceof FoldStep.Folds folds) {
                for (Fold fold : folds.folds()) {
                    mark++;
                    said.add(words.say("fold." + fold.part().name().toLowerCase(Locale.ROOT)
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
