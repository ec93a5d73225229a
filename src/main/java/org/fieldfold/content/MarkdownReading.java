package org.fieldfold.content;

import com.vladsch.flexmark.ast.AutoLink;
import com.vladsch.flexmark.ast.BulletList;
import com.vladsch.flexmark.ast.Code;
import com.vladsch.flexmark.ast.Emphasis;
import com.vladsch.flexmark.ast.HardLineBreak;
import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.ast.HtmlEntity;
import com.vladsch.flexmark.ast.HtmlInline;
import com.vladsch.flexmark.ast.HtmlInlineComment;
import com.vladsch.flexmark.ast.Link;
import com.vladsch.flexmark.ast.ListBlock;
import com.vladsch.flexmark.ast.MailLink;
import com.vladsch.flexmark.ast.OrderedList;
import com.vladsch.flexmark.ast.Paragraph;
import com.vladsch.flexmark.ast.Reference;
import com.vladsch.flexmark.ast.SoftLineBreak;
import com.vladsch.flexmark.ast.StrongEmphasis;
import com.vladsch.flexmark.ast.TextBase;
import com.vladsch.flexmark.ast.HtmlBlock;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Node;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fieldfold.prose.Passage;
import org.fieldfold.prose.Prose;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Span;

/** Reads the Markdown of one text. */
final class MarkdownReading {
    private static final Parser PARSER = Parser.builder().build();
    private static final int MOST_FINDINGS = 20;

    private final Span place;
    private final List<Passage> passages = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final List<TextReading.EntryLink> links = new ArrayList<>();
    private final Prose prose;
    private final String written;
    private int searchFrom;

    /** @param place where the text stands; findings lie in it */
    MarkdownReading(String markdown, Span place) {
        this.place = place;
        this.written = place.file().text().substring(place.start(), place.end());
        for (Node block : PARSER.parse(markdown).getChildren()) {
            block(block);
        }
        this.prose = new Prose(markdown, passages);
    }

    Prose prose() {
        return prose;
    }

    List<Finding> findings() {
        return findings;
    }

    List<TextReading.EntryLink> links() {
        return links;
    }

    private void report(Finding finding) {
        if (findings.size() < MOST_FINDINGS) {
            findings.add(finding);
        }
    }

    private void block(Node block) {
        if (block instanceof Paragraph) {
            passages.add(new Passage.Paragraph(runs(block)));
        } else if (block instanceof Heading heading) {
            passages.add(new Passage.Heading(Math.max(2, heading.getLevel()), runs(heading)));
        } else if (block instanceof BulletList || block instanceof OrderedList) {
            passages.add(bullets((ListBlock) block));
        } else if (!(block instanceof Reference)) {
            boolean html = block instanceof HtmlBlock;
            String chars = block.getChars().toString().strip();
            report(html ? rawHtml(chars) : unprintable(block, chars));
            if (!chars.isEmpty()) {
                passages.add(new Passage.Paragraph(List.of(Run.plain(oneLine(chars)))));
            }
        }
    }

    private Passage bullets(ListBlock list) {
        List<List<Run>> items = new ArrayList<>();
        for (Node item : list.getChildren()) {
            List<Run> runs = new ArrayList<>();
            for (Node part : item.getChildren()) {
                if (!runs.isEmpty()) {
                    runs.add(Run.plain(" "));
                }
                if (part instanceof Paragraph) {
                    runs.addAll(runs(part));
                } else {
                    report(unprintable(part, part.getChars().toString().strip()));
                    runs.add(Run.plain(oneLine(part.getChars().toString())));
                }
            }
            items.add(joined(runs));
        }
        return new Passage.Bullets(list instanceof OrderedList, items);
    }

    private List<Run> runs(Node block) {
        List<Run> runs = new ArrayList<>();
        inlines(block, Run.Style.PLAIN, "", runs);
        return joined(runs);
    }

    private void inlines(Node parent, Run.Style style, String link, List<Run> runs) {
        for (Node node : parent.getChildren()) {
            inline(node, style, link, runs);
        }
    }

    private void inline(Node node, Run.Style style, String link, List<Run> runs) {
        if (node instanceof SoftLineBreak || node instanceof HardLineBreak) {
            runs.add(new Run(" ", style, link));
        } else if (node instanceof StrongEmphasis) {
            inlines(node, Run.Style.STRONG, link, runs);
        } else if (node instanceof Emphasis emphasis) {
            String words = oneLine(emphasis.getText().toString());
            inlines(node, NamesInText.style(words), link, runs);
        } else if (node instanceof Link to) {
            inlines(node, style, address(to.getUrl().unescape(), to.getChars().toString()), runs);
        } else if (node instanceof AutoLink auto) {
            String address = auto.getText().unescape();
            runs.add(new Run(address, style, address(address, auto.getChars().toString())));
        } else if (node instanceof MailLink mail) {
            runs.add(new Run(mail.getText().unescape(), style, "mailto:" + mail.getText().unescape()));
        } else if (node instanceof HtmlInline || node instanceof HtmlInlineComment) {
            report(rawHtml(node.getChars().toString()));
            runs.add(new Run(node.getChars().toString(), style, link));
        } else if (node instanceof TextBase && node.hasChildren()) {
            inlines(node, style, link, runs);
        } else if (node instanceof com.vladsch.flexmark.ast.Text || node instanceof HtmlEntity) {
            unseen(node);
            runs.add(new Run(node.getChars().unescape(), style, link));
        } else {
            String chars = node.getChars().toString();
            report(unprintable(node, chars));
            runs.add(new Run(node instanceof Code code ? code.getText().toString() : chars, style, link));
        }
    }

    /** An entity must not bring in what may not be written. */
    private void unseen(Node node) {
        if (node instanceof HtmlEntity) {
            String sign = node.getChars().unescape();
            UnseenCharacters.next(sign, 0).ifPresent(at -> report(UnseenCharacters.finding(
                    find(node.getChars().toString()), sign.codePointAt(at))));
        }
    }

    /** Where a link leads; empty, with a finding, where it must not. */
    private String address(String url, String written) {
        if (url.startsWith("entry:")) {
            links.add(new TextReading.EntryLink(url.substring(6), find(written)));
            return "#" + url.substring(6);
        }
        if (LinkForm.isKnown(url)) {
            return url;
        }
        report(FormRule.LINK_SCHEME.at(find(written),
                "expected a link to entry:, https:, http:, mailto: or tel:, found '" + ScalarReading.cut(url)
                        + "'",
                "write [words](entry:id) for an entry, or the whole address of a page"));
        return "";
    }

    private Finding rawHtml(String found) {
        return FormRule.RAW_HTML.at(find(found), "expected Markdown, found the HTML '"
                + ScalarReading.cut(found) + "'",
                "take the tag out; write a '<' that is meant as a sign as '\\<'");
    }

    private Finding unprintable(Node node, String found) {
        String kind = node.getNodeName().replaceAll("(?<=\\p{Ll})(?=\\p{Lu})", " ")
                .toLowerCase(Locale.ROOT);
        return FormRule.UNPRINTABLE_MARKDOWN.at(find(found),
                "expected paragraphs, lists, headings, emphasis or links, "
                + "found " + kind + " '" + ScalarReading.cut(found) + "'",
                "write it as a sentence or a list; a sign that is meant as such has a '\\' before it");
    }

    /**
     * The place of a piece of the text in the file: texts may be folded and indented there, so it is looked
     * for.
     */
    private Span find(String piece) {
        int lineEnd = piece.indexOf('\n');
        String line = lineEnd < 0 ? piece : piece.substring(0, lineEnd);
        int at = written.indexOf(line, searchFrom);
        if (line.isEmpty() || at < 0) {
            return place;
        }
        searchFrom = at + line.length();
        return new Span(place.file(), place.start() + at, place.start() + at + line.length());
    }

    private static String oneLine(String words) {
        return words.strip().replaceAll("\\s*\\n\\s*", " ");
    }

    /** Neighbours of one style and link become one run. */
    private static List<Run> joined(List<Run> runs) {
        List<Run> joined = new ArrayList<>();
        for (Run run : runs) {
            int last = joined.size() - 1;
            if (last >= 0 && joined.get(last).style() == run.style() && joined.get(last).link()
                    .equals(run.link())) {
                joined.set(last, new Run(joined.get(last).text() + run.text(), run.style(), run.link()));
            } else if (!run.text().isEmpty()) {
                joined.add(run);
            }
        }
        return joined;
    }
}
