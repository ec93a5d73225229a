package org.fieldfold.fold;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The folds and cuts of a sheet as lines on its pages. */
record Lines(FoldedSheet sheet, PageGeometry pages, double[] xs, double[] ys) {

    /** Each fold on both printed sides, in runs that close the same way. */
    List<FoldLine> folds() {
        List<Crease> creases = new ArrayList<>(sheet.creases());
        creases.sort(Comparator.comparing((Crease crease) -> crease.joint().line().axis())
                .thenComparing(crease -> crease.joint().line().index())
                .thenComparing(crease -> crease.joint().band()));
        List<FoldLine> lines = new ArrayList<>();
        for (Side side : sheet.scheme().oneSided() ? List.of(Side.FRONT) : List.of(Side.values())) {
            int from = 0;
            for (int k = 1; k <= creases.size(); k++) {
                if (k == creases.size() || !continues(creases.get(k - 1), creases.get(k))) {
                    lines.add(fold(side, creases.get(from), creases.get(k - 1)));
                    from = k;
                }
            }
        }
        return lines;
    }

    /** The cuts on the front page. */
    List<CutLine> cuts() {
        return sheet.scheme().cuts().stream().map(cut -> {
            PageGeometry.Box box = pages.onPage(Side.FRONT, along(cut.line(), cut.from(), cut.to()));
            return new CutLine(Side.FRONT, box.x1(), box.y1(), box.x2(), box.y2());
        }).toList();
    }

    private static boolean continues(Crease a, Crease b) {
        return a.joint().line().equals(b.joint().line()) && a.joint().band() + 1 == b.joint().band()
                && a.valley() == b.valley();
    }

    private FoldLine fold(Side side, Crease first, Crease last) {
        PageGeometry.Box box = pages.onPage(side,
                along(first.joint().line(), first.joint().band(), last.joint().band() + 1));
        boolean valley = first.valley() == pages.showsUpper(side);
        return new FoldLine(side, box.x1(), box.y1(), box.x2(), box.y2(), valley, first.step(),
                !first.plain() ? FoldLine.Move.ALONG : valley ? FoldLine.Move.OVER : FoldLine.Move.UNDER);
    }

    private PageGeometry.Box along(GridLine line, int from, int to) {
        return line.axis() == Axis.UPRIGHT
                ? new PageGeometry.Box(xs[line.index()], ys[from], xs[line.index()], ys[to])
                : new PageGeometry.Box(xs[from], ys[line.index()], xs[to], ys[line.index()]);
    }
}
