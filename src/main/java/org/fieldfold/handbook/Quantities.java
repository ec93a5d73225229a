package org.fieldfold.handbook;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds quantities that stand in both systems of units, as {@code Measures} writes them and as authors do, and marks
 * them so that the script can show one of both: {@code <m->} where the metric one stands first, {@code <c->} where the
 * other does. Both stand there as text, one of them in brackets, so nothing is lost without a script.
 */
final class Quantities {
    private static final String NUMBER = "\\d[\\d.,]*(?:\u00a0\\d+/\\d+|/\\d+)?";
    private static final String RANGE = "(?<![\\d/.,–-])" + NUMBER + "(?:–\u2060?" + NUMBER + ")?[ \u00a0]";
    private static final String IN_BRACKETS = RANGE.substring(RANGE.indexOf(')') + 1);

    /** Units of one kind of quantity: metric, customary. */
    private static final List<String[]> KINDS = List.of(new String[] {"[cm]?m", "in|pulg|ft|feet|pies"},
            new String[] {"°C(?:-days|-día)?", "°F(?:-days|-día)?"});

    private static final Pattern PAIR = Pattern.compile(String.join("|", KINDS.stream().map(kind ->
            pair(kind[0], kind[1]) + "|" + pair(kind[1], kind[0])).toList()));

    private static final Pattern METRIC_FIRST = Pattern.compile("^[^(]*[ \u00a0](?:[cm]?m|°C(?:-days|-día)?) \\(");

    private Quantities() {
    }

    private static String pair(String first, String other) {
        return RANGE + "(?:" + first + ") \\(" + IN_BRACKETS + "(?:" + other + ")\\)";
    }

    static void write(Markup out, String text) {
        if (text.indexOf('(') < 0) {
            out.text(Together.kept(text));
            return;
        }
        Matcher pair = PAIR.matcher(text);
        int done = 0;
        while (pair.find()) {
            out.text(Together.kept(text.substring(done, pair.start())));
            out.element(METRIC_FIRST.matcher(pair.group()).find() ? "m-" : "c-", Together.kept(pair.group()));
            done = pair.end();
        }
        out.text(Together.kept(text.substring(done)));
    }
}
