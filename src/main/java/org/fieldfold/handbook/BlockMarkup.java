package org.fieldfold.handbook;

import java.util.List;
import java.util.Optional;
import org.fieldfold.manuscript.Block;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.prose.Run;

/** Writes the blocks of a page. */
final class BlockMarkup {
    private final Form form;
    private final Markup out;
    private final int titleLevel;
    private final Phrases phrases;

    /** @param titleLevel level of the page's own title; headings count from there */
    BlockMarkup(Form form, Markup out, int titleLevel, Phrases phrases) {
        this.form = form;
        this.out = out;
        this.titleLevel = titleLevel;
        this.phrases = phrases;
    }

    void write(List<Block> blocks) {
        for (Block block : blocks) {
            write(block);
            out.line();
        }
    }

    private void write(Block block) {
        if (block instanceof Block.Title title) {
            title(title);
        } else if (block instanceof Block.Heading heading) {
            out.open("h" + Math.min(6, heading.level() - 2 + titleLevel));
            runs(heading.runs());
            out.close();
        } else if (block instanceof Block.Paragraph paragraph) {
            paragraph("", paragraph.runs());
        } else if (block instanceof Block.Items items) {
            items(items);
        } else if (block instanceof Block.Plates plates) {
            new PictureMarkup(form, out, this).plates(plates, phrases.say("book.bar-note"));
        } else if (block instanceof Block.CountBox box) {
            box(box);
        } else if (block instanceof Block.Tier tier) {
            new TierMarkup(this, out, form.gated() ? Optional.of(phrases.say("book.gate"))
                    : Optional.empty()).write(tier);
        } else if (block instanceof Block.Grid grid) {
            new GridMarkup(form, out, this).write(grid);
        } else if (block instanceof Block.Weeks weeks) {
            new WeeksMarkup(form, out).write(weeks, this);
        } else if (block instanceof Block.Downloads downloads) {
            downloads(downloads);
        } else if (block instanceof Block.Diagrams diagrams) {
            new PictureMarkup(form, out, this).diagrams(diagrams);
        } else if (block instanceof Block.Facts facts) {
            facts(facts.facts());
        } else if (block instanceof Block.Tiles tiles) {
            new PictureMarkup(form, out, this).tiles(tiles);
        } else if (block instanceof Block.SideBySide pair) {
            new PictureMarkup(form, out, this).pair(pair);
        } else if (block instanceof Block.Notice notice) {
            paragraph("notice", notice.runs());
        } else if (block instanceof Block.LocalNote note) {
            paragraph("notice", note.runs());
        } else if (block instanceof Block.Code code) {
            paragraph("", code.caption());
        } else {
            out.empty("hr");
        }
    }

    private void title(Block.Title title) {
        out.open("h" + titleLevel, "class", "title");
        runs(title.name());
        out.close();
        if (!title.beneath().isEmpty()) {
            paragraph("beneath", title.beneath());
        }
    }

    void paragraph(String kind, List<Run> runs) {
        if (kind.isEmpty()) {
            out.open("p");
        } else {
            out.open("p", "class", kind);
        }
        runs(runs);
        out.close();
    }

    /** Where there is no folder there are no files beside the page, and nothing is said about them. */
    private void downloads(Block.Downloads downloads) {
        if (!form.hasFiles() || downloads.files().isEmpty()) {
            return;
        }
        out.open("ul", "class", "ways");
        for (Block.Download file : downloads.files()) {
            out.open("li").element("a", file.label(), "href", file.file(), "download", file.file(),
                    "type", "text/calendar").close();
        }
        out.close();
    }

    private void items(Block.Items items) {
        if (items.items().isEmpty()) {
            return;
        }
        out.open(items.numbered() ? "ol" : "ul");
        for (List<Run> item : items.items()) {
            out.open("li");
            runs(item);
            out.close();
        }
        out.close();
    }

    private void box(Block.CountBox box) {
        if (box.counted().isEmpty()) {
            out.open("div", "class", "card");
        } else {
            out.open("div", "class", "card", "data-count", box.counted());
        }
        out.open("p", "class", "how");
        runs(box.look());
        out.close();
        out.open("p", "class", "act").element("span", box.above()).text(" ")
                .element("b", box.number()).text(" ").element("span", box.below()).close();
        if (box.stops() > 0) {
            out.open("ol", "class", "stops", "aria-hidden", "true");
            for (int stop = 1; stop <= box.stops(); stop++) {
                out.element("li", String.valueOf(stop));
            }
            out.close();
        }
        out.close();
    }

    void facts(List<Block.Fact> facts) {
        out.open("dl");
        for (Block.Fact fact : facts) {
            out.open("dt");
            text(fact.name());
            out.close();
            if (isWays(fact.runs())) {
                ways(fact.runs());
            } else {
                out.open("dd");
                runs(fact.runs());
                out.close();
            }
        }
        out.close();
    }

    /**
     * Whether there are several links and nothing else but what parts them: then each gets room for a thumb.
     */
    private static boolean isWays(List<Run> runs) {
        return runs.stream().filter(run -> !run.link().isEmpty()).count() > 1
                && runs.stream().allMatch(run -> !run.link().isEmpty() || run.text().strip().length() == 1);
    }

    private void ways(List<Run> runs) {
        out.open("dd").open("ul", "class", "ways");
        for (Run run : runs) {
            if (!run.link().isEmpty()) {
                out.open("li");
                run(run);
                out.close();
            }
        }
        out.close().close();
    }

    static String words(List<Run> runs) {
        StringBuilder words = new StringBuilder();
        runs.forEach(run -> words.append(run.text()));
        return words.toString();
    }

    void runs(List<Run> runs) {
        runs.forEach(this::run);
    }

    private void run(Run run) {
        if (run.link().startsWith("#")) {
            form.href(run.link()).ifPresentOrElse(href -> linked(run, "href", href), () -> styled(run));
        } else if (run.link().isEmpty()) {
            styled(run);
        } else {
            Links.outside(run.link()).ifPresentOrElse(
                    href -> linked(run, "href", href, "rel", "noreferrer external"), () -> styled(run));
        }
    }

    /** A mail address may break behind its sign, and nowhere else. */
    private void linked(Run run, String... attributes) {
        out.open("a", attributes);
        int at = run.link().startsWith("mailto:") ? run.text().indexOf('@') + 1 : 0;
        if (at > 0) {
            styled(new Run(run.text().substring(0, at), run.style(), "", run.language()));
            out.empty("wbr");
        }
        styled(new Run(run.text().substring(at), run.style(), "", run.language()));
        out.close();
    }

    private void styled(Run run) {
        if (run.language().matches("[a-z]{2,3}(-[A-Za-z0-9]{2,8})*")) {
            out.open("span", "lang", run.language());
            styled(run.in(""));
            out.close();
            return;
        }
        switch (run.style()) {
            case PLAIN -> text(run.text());
            case STRONG -> styled("b", run.text());
            case EMPHASIS -> styled("em", run.text());
            case NAME -> out.element("i", Together.kept(run.text()), "lang", "la");
        }
    }

    private void styled(String tag, String text) {
        out.open(tag);
        text(text);
        out.close();
    }

    /** Where a script runs, quantities in both systems can be told apart. */
    void text(String text) {
        if (form.scripted()) {
            Quantities.write(out, text);
        } else {
            out.text(Together.kept(text));
        }
    }
}
