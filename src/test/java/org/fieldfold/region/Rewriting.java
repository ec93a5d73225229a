package org.fieldfold.region;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fieldfold.report.Sha256;

/** Changes to the text of a content file, which is kept as it was written in all other places. */
final class Rewriting {
    private static final Pattern ID = Pattern.compile("(?<![a-z0-9-])[a-z0-9]+(?:-[a-z0-9]+)*(?![a-z0-9-])");
    private static final Pattern LIST = Pattern.compile("(?m)^( *[a-z-]+: )\\[([^\\]\\n]*)\\]$");
    private static final Pattern LINE = Pattern.compile("(?m)^ *- ([a-z0-9-]+)\\n");
    private static final Pattern LOOK_ALIKE = Pattern.compile(
            "(?m)^  - entry: ([a-z0-9-]+)\\n(?:    .*\\n|\\n(?=    ))*");
    private static final Pattern SAID_LOOK_ALIKE = Pattern.compile(
            "(?m)^look-alikes/([a-z0-9-]+)/.*:\\n(?:  .*\\n|\\n(?=  ))*");

    private Rewriting() {
    }

    /** Gives entries new ids wherever they are named. */
    static String rename(String text, Map<String, String> ids) {
        return ID.matcher(text).replaceAll(found -> ids.getOrDefault(found.group(), found.group()));
    }

    /** Takes ids out of lists, on one line or on several. */
    static String withoutListed(String text, Set<String> gone) {
        String left = LINE.matcher(text).replaceAll(found -> kept(found, gone));
        left = left.replaceAll("(?m)^[a-z-]+:\\n(?! )", "");
        return LIST.matcher(left).replaceAll(found -> found.group(1) + "["
                + Stream.of(found.group(2).split(", *")).filter(id -> !gone.contains(id))
                        .collect(Collectors.joining(", ")).replace("$", "\\$") + "]");
    }

    /** Takes out what tells an entry from others. */
    static String withoutLookAlikes(String text, Set<String> gone) {
        String left = LOOK_ALIKE.matcher(text).replaceAll(found -> kept(found, gone));
        left = SAID_LOOK_ALIKE.matcher(left).replaceAll(found -> kept(found, gone));
        return left.replaceAll("(?m)^look-alikes:\\n(?! )", "");
    }

    private static String kept(MatchResult found, Set<String> gone) {
        return gone.contains(found.group(1)) ? "" : Matcher.quoteReplacement(found.group());
    }

    /** Says one text of a translation anew. */
    static String say(String page, String path, String base, String text) {
        return block(path).matcher(page).replaceFirst(Matcher.quoteReplacement(
                passage(path, base, text)));
    }

    /** Takes one text out of a translation. */
    static String unsaid(String page, String path) {
        return block(path).matcher(page).replaceFirst("");
    }

    private static Pattern block(String path) {
        return Pattern.compile("(?m)^" + Pattern.quote(path) + ":\\n(?:  .*\\n|\\n(?=  ))*");
    }

    /** As translators write it: behind the hash of the text that is translated. */
    static String passage(String path, String base, String text) {
        return path + ":\n  # " + base + "\n  of: "
                + Sha256.of(base.getBytes(StandardCharsets.UTF_8)).substring(0, 8)
                + "\n  text: " + text + "\n";
    }

    /** The rest of the first line that begins so. */
    static String valueOf(String text, String key) {
        return text.lines().filter(line -> line.startsWith(key)).findFirst().orElseThrow(() ->
                new IllegalArgumentException("expected a line '" + key + "'")).substring(key.length()).strip();
    }
}
