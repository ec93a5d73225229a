package org.fieldfold.content;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fieldfold.prose.Run;

/**
 * Emphasis in its plainest form: words between two asterisks that stand at the beginning and the end of
 * words.
 */
final class NamesInText {
    private static final Pattern SCIENTIFIC = Pattern.compile("\\p{Lu}\\p{L}+(?: [\\p{Ll}-]+)?|\\p{Lu}\\. "
            + "[\\p{Ll}-]+");
    private static final Pattern EMPHASIS = Pattern.compile("(?<![^ "
            + "(])\\*([A-Za-z](?:[^*]*[A-Za-z.])?)\\*(?![^ .,;:)])");

    private NamesInText() {
    }

    /**
     * Whether emphasised words are a genus, or a genus and species: {@code Perillus}, {@code P. bioculatus}.
     */
    static Run.Style style(String words) {
        return SCIENTIFIC.matcher(words).matches() ? Run.Style.NAME : Run.Style.EMPHASIS;
    }

    /** The runs of a paragraph; none when an asterisk in it may mean something else. */
    static List<Run> runs(String paragraph) {
        if (paragraph.indexOf('*') < 0) {
            return List.of(Run.plain(paragraph));
        }
        List<Run> runs = new ArrayList<>();
        Matcher emphasis = EMPHASIS.matcher(paragraph);
        int from = 0;
        while (emphasis.find()) {
            String before = paragraph.substring(from, emphasis.start());
            if (before.indexOf('*') >= 0) {
                return List.of();
            }
            if (!before.isEmpty()) {
                runs.add(Run.plain(before));
            }
            runs.add(new Run(emphasis.group(1), style(emphasis.group(1)), ""));
            from = emphasis.end();
        }
        if (paragraph.indexOf('*', from) >= 0) {
            return List.of();
        }
        if (from < paragraph.length()) {
            runs.add(Run.plain(paragraph.substring(from)));
        }
        return runs;
    }
}
