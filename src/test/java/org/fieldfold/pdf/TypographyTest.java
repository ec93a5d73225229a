package org.fieldfold.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fieldfold.fold.Paper;
import org.fieldfold.typeset.Mark;
import org.fieldfold.typeset.SetPanel;
import org.fieldfold.typeset.Tag;
import org.junit.jupiter.api.Test;

/**
 * How the lines of the ten guides fall on both papers, by the rules of the trade (common practice, no
 * source), as they are drawn on their panels.
 */
class TypographyTest {
    /** One drawn line of a block. */
    private record Line(String text, double from, double to, double size) {
        String[] words() {
            return text.strip().split("[ \u00a0]+");
        }
    }

    /** One block on one panel, with its lines from the top. */
    private record Lines(Tag block, List<Line> lines) {
    }

    private static final String UNITS = "(?:%|mm|cm|m|km|in|ft|mi|miles?|inch(?:es)?|feet|foot|acres?|ha|°"
            + "|°C|°F|days?|weeks?|months?|years?|hours?|h|d|min)";

    /** All blocks of a panel in reading order; what is not read aloud is left out. */
    private static List<Lines> lines(DemoGuides.Printed guide, SetPanel panel) {
        Map<Tag, Tag> blocks = new IdentityHashMap<>();
        blocks(guide.set().document(), guide.set().document(), blocks);
        Map<Tag, Map<Double, List<Mark.Words>>> found = new IdentityHashMap<>();
        List<Tag> order = new ArrayList<>();
        for (Mark mark : panel.marks()) {
            if (mark instanceof Mark.Words words && words.tag().isPresent()) {
                Tag block = blocks.get(words.tag().get());
                found.computeIfAbsent(block, unseen -> {
                    order.add(block);
                    return new LinkedHashMap<>();
                }).computeIfAbsent(words.baseline(), unseen -> new ArrayList<>()).add(words);
            }
        }
        return order.stream().map(block -> new Lines(block, found.get(block).values().stream()
                .map(TypographyTest::line).toList())).toList();
    }

    private static Line line(List<Mark.Words> words) {
        StringBuilder text = new StringBuilder();
        words.forEach(one -> text.append(one.text()));
        Mark.Words last = words.get(words.size() - 1);
        return new Line(text.toString(), words.get(0).x(),
                last.x() + METRICS.width(last.face(), last.text().stripTrailing()) * last.size() / 1000,
                last.size());
    }

    private static final TypeCase METRICS = new TypeCase();

    private static void blocks(Tag tag, Tag holder, Map<Tag, Tag> block) {
        boolean inline = tag.role() == Tag.Role.SPAN || tag.role() == Tag.Role.LINK;
        Tag own = inline ? holder : tag;
        block.put(tag, own);
        tag.children().forEach(child -> blocks(child, own, block));
    }

    private static List<DemoGuides.Printed> guides() {
        return Stream.of(Paper.LETTER, Paper.A4).flatMap(paper -> DemoGuides.on(paper).stream()).toList();
    }

    private static String name(DemoGuides.Printed guide, SetPanel panel) {
        return guide.id() + " on " + guide.imposition().paper().id() + ", panel " + panel.reading() + ": ";
    }

    private static void everyBlock(BiConsumer<String, Lines> look) {
        int seen = 0;
        for (DemoGuides.Printed guide : guides()) {
            for (SetPanel panel : guide.set().panels()) {
                for (Lines block : lines(guide, panel)) {
                    look.accept(name(guide, panel), block);
                    seen++;
                }
            }
        }
        assertTrue(seen > 2000, "blocks seen: " + seen);
    }

    @Test
    void noShortWordStandsAloneOnALastLine() {
        List<String> faults = new ArrayList<>();
        everyBlock((where, block) -> {
            int last = block.lines().size() - 1;
            // a column so narrow that its lines have a word or two leaves no choice
            if (last > 0 && block.lines().get(last).words().length == 1
                    && block.lines().get(last - 1).words().length > 2) {
                Line alone = block.lines().get(last);
                double widest = block.lines().stream().mapToDouble(line -> line.to() - line.from()).max()
                        .orElseThrow();
                if (alone.to() - alone.from() < widest / 2) {
                    faults.add(where + block.lines().get(last - 1).text() + "| " + alone.text());
                }
            }
        });
        assertEquals(List.of(), faults);
    }

    @Test
    void noHeadingStandsAtTheFootOfAPanel() {
        List<String> faults = new ArrayList<>();
        for (DemoGuides.Printed guide : guides()) {
            for (SetPanel panel : guide.set().panels()) {
                List<Lines> blocks = lines(guide, panel);
                for (int i = 0; i < blocks.size(); i++) {
                    Tag.Role role = blocks.get(i).block().role();
                    if (role == Tag.Role.H1 || role == Tag.Role.H2 || role == Tag.Role.H3) {
                        boolean followed = blocks.subList(i + 1, blocks.size()).stream()
                                .anyMatch(next -> next.block().role() != Tag.Role.H1
                                        && next.block().role() != Tag.Role.H2
                                        && next.block().role() != Tag.Role.H3);
                        if (!followed) {
                            faults.add(name(guide, panel) + blocks.get(i).lines());
                        }
                    }
                }
            }
        }
        assertEquals(List.of(), faults);
    }

    @Test
    void numbersStayWithTheirUnitsAndSignsWithTheirNumbers() {
        Pattern number = Pattern.compile("(?:^|.*[\\s(\u00a0])[≥≤±~]?[0-9][0-9.,–]*[¼½¾⅓⅔⅛]?\\s*$");
        Pattern unit = Pattern.compile("^" + UNITS + "(?![\\p{L}\\p{N}]).*");
        Pattern openEnd = Pattern.compile(".*(?:[≥≤±<>=×–(]|[0-9]-)\\s*$");
        List<String> faults = new ArrayList<>();
        everyBlock((where, block) -> {
            for (int i = 0; i + 1 < block.lines().size(); i++) {
                String line = block.lines().get(i).text();
                String next = block.lines().get(i + 1).text();
                // the number of a count card stands large above what is counted
                boolean even = block.lines().get(i).size() == block.lines().get(i + 1).size();
                if (even && number.matcher(line).matches() && unit.matcher(next).matches()
                        || openEnd.matcher(line).matches() && next.matches("^[0-9].*")) {
                    faults.add(where + line + "| " + next);
                }
            }
        });
        assertEquals(List.of(), faults);
    }

    /** Signs that a typewriter had no key for are the real ones. */
    @Test
    void fractionsDegreesAndSignsAreTheRealOnes() {
        Map<String, Pattern> wrong = new LinkedHashMap<>();
        wrong.put("a fraction", Pattern.compile("(?<![\\d/.-])[1-9]/[2-9](?![\\d/-])"));
        wrong.put("a degree sign", Pattern.compile("\\d ?[ºo˚] ?[CF]\\b|\\d degrees? [CF]\\b|\\d ?[CF]\\b"));
        wrong.put("a sign of order", Pattern.compile("[<>]="));
        wrong.put("a range with its dash", Pattern.compile("(?<![\\d-])\\d{1,2}-\\d{1,2}(?![\\d-])"));
        wrong.put("a sign for times", Pattern.compile("\\d ?[xX] ?\\d"));
        wrong.put("a dash", Pattern.compile("--| - "));
        wrong.put("an apostrophe", Pattern.compile("['\"`]"));
        wrong.put("an ellipsis", Pattern.compile("\\.\\.\\."));
        wrong.put("one space", Pattern.compile("\\S  +\\S"));
        wrong.put("white before a stop", Pattern.compile(" [,;.!?](?!\\d)"));
        List<String> faults = new ArrayList<>();
        everyBlock((where, block) -> {
            StringBuilder text = new StringBuilder();
            block.lines().forEach(line -> text.append(line.text()));
            wrong.forEach((sign, pattern) -> {
                Matcher matcher = pattern.matcher(text);
                if (matcher.find()) {
                    faults.add(where + "expected " + sign + ", found '" + matcher.group() + "' in " + text);
                }
            });
        });
        assertEquals(List.of(), faults);
    }
}
