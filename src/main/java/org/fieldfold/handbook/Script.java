package org.fieldfold.handbook;

import java.util.List;
import java.util.stream.Collectors;

/**
 * The handbook's script: small pieces in one closed function, with the facts that they need in front. Everything
 * can be read and reached without it.
 */
final class Script {
    /** In the order in which they stand; the last one starts the others. */
    static final List<String> PIECES = List.of("words", "fold", "search", "finder", "warmth", "field", "forms", "units",
            "season", "reckoners", "count", "notes", "counter", "key", "office", "memory", "keep",
            "start");

    private Script() {
    }

    /** All pieces, put together when they are first asked for. */
    private static final class Whole {
        static final String TEXT = pieces(PIECES);
    }

    /** @param facts as JSON */
    static String of(String facts) {
        return "(function(){\n'use strict';\nconst facts=" + facts + ";\n" + Whole.TEXT + "}());\n";
    }

    /** Some pieces, without their comments and the blanks in front of lines. */
    static String pieces(List<String> names) {
        return names.stream().map(name -> Sheet.read("script/" + name + ".js")).flatMap(String::lines)
                .map(String::strip).filter(line -> !line.isEmpty() && !line.startsWith("//"))
                .collect(Collectors.joining("\n", "", "\n"));
    }
}
