package org.fieldfold.handbook;

import java.util.Comparator;
import java.util.List;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.FigureNote;
import org.fieldfold.entry.Keys;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Release;

/** For the specialist: every figure with its credit, licence and release; what is not released stands first. */
public final class FiguresPage {
    private final Markup out = new Markup();

    private FiguresPage() {
    }

    /** The page as a file, self-contained and without script. */
    public static byte[] write(ContentBase base, boolean proof) {
        FiguresPage page = new FiguresPage();
        ReviewHead.open(page.out, base.edition().value(), "Figures", "Every figure with who made it, its "
                + "licence, and why it may be printed and given on.", proof);
        page.table(base.figures().values().stream().map(Placed::value)
                .sorted(Comparator.comparing(FiguresPage::isReleased).thenComparing(Figure::id)).toList());
        page.out.close().close();
        return new Frame("en").inline("Figures of edition " + base.edition().value().year(),
                Sheet.read("handbook.css") + Sheet.read("review.css"), page.out.toString());
    }

    private static boolean isReleased(Figure figure) {
        return figure.note().release().filter(Release::given).isPresent();
    }

    private void table(List<Figure> figures) {
        long open = figures.stream().filter(figure -> !isReleased(figure)).count();
        out.element("p", figures.size() + " figures, " + open + " of them without release.").line();
        out.open("table").element("caption", "Without release first").open("thead").open("tr");
        for (String column : List.of("Figure", "Shows", "Credit", "Licence", "Release")) {
            out.element("th", column, "scope", "col");
        }
        out.close().close().open("tbody").line();
        figures.forEach(this::row);
        out.close().close().line();
    }

    private void row(Figure figure) {
        FigureNote note = figure.note();
        out.open("tr", "class", isReleased(figure) ? "easy" : "over").open("td").text(figure.id())
                .empty("br").element("span", figure.file(), "class", "at").close();
        out.element("td", note.shows().entry() + ", " + note.caption())
                .element("td", note.credit().orElse("none"))
                .element("td", note.licence().orElse("none"), "class", "brief")
                .element("td", note.release().map(Keys::word).map(word -> word.replace('-', ' '))
                        .orElse("none")).close().line();
    }
}
