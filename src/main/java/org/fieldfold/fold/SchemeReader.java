package org.fieldfold.fold;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;

/** Reads a scheme from its text, in the format that {@link FoldSchemes#read} describes. */
final class SchemeReader {
    private final String name;
    private final Map<String, String> facts = new TreeMap<>();
    private final List<FoldStep> steps = new ArrayList<>();
    private final List<Cut> cuts = new ArrayList<>();
    private int line;

    private SchemeReader(String name) {
        this.name = name;
    }

    static FoldScheme read(String name, String text) {
        SchemeReader reader = new SchemeReader(name);
        for (String raw : text.split("\r\n|\r|\n", -1)) {
            reader.line++;
            String statement = raw.replaceFirst("#.*", "").strip();
            if (!statement.isEmpty()) {
                reader.statement(statement);
            }
        }
        return reader.at(reader::scheme);
    }

    private void statement(String statement) {
        String[] words = statement.split("\\s+", 2);
        String rest = words.length > 1 ? words[1] : "";
        switch (words[0]) {
            case "scheme", "title", "sheet", "columns", "rows", "print", "read", "head", "trim" -> {
                if (facts.putIfAbsent(words[0], rest) != null) {
                    throw wrong("'" + words[0] + "' once", "it a second time");
                }
                check(words[0], rest);
            }
            case "fold" -> steps.add(new FoldStep.Folds(parts(rest).stream().map(this::fold).toList()));
            case "gather" -> steps.add(new FoldStep.Gather(parts(rest).stream().map(this::bend).toList()));
            case "cut" -> cuts.add(cut(rest));
            default -> throw wrong("scheme, title, sheet, columns, rows, print, read, head, trim, cut, fold "
                    + "or gather", "'" + words[0] + "'");
        }
    }

    private void check(String key, String value) {
        switch (key) {
            case "sheet" -> oneOf(value, "landscape", "portrait");
            case "print" -> oneOf(value, "both-sides", "one-sided");
            case "read" -> oneOf(value, "opening", "leafing");
            case "head" -> edge(value);
            case "trim" -> edges(value);
            case "columns", "rows" -> numbers(value);
            default -> {
                if (value.isBlank()) {
                    throw wrong("something after '" + key + "'", "nothing");
                }
            }
        }
    }

    private FoldScheme scheme() {
        for (String needed : List.of("scheme", "title", "sheet", "columns", "rows")) {
            if (!facts.containsKey(needed)) {
                throw wrong("a line '" + needed + " …'", "none in the whole file");
            }
        }
        return new FoldScheme(facts.get("scheme"), facts.get("title"), facts.get("sheet").equals("landscape"),
                numbers(facts.get("columns")), numbers(facts.get("rows")),
                "one-sided".equals(facts.get("print")), "leafing".equals(facts.get("read")),
                edge(facts.getOrDefault("head", "top")), steps, cuts, edges(facts.getOrDefault("trim", "")));
    }

    private Fold fold(String text) {
        String[] words = text.split("\\s+");
        if (words.length != 3) {
            throw wrong("a fold such as 'x2 right over'", "'" + text + "'");
        }
        GridLine along = gridLine(words[0]);
        Part part = Part.valueOf(oneOf(words[1], "left", "right", "top", "bottom").toUpperCase(Locale.ROOT));
        boolean over = oneOf(words[2], "over", "under").equals("over");
        return at(() -> new Fold(along, part, over));
    }

    private FoldStep.Bend bend(String text) {
        String[] words = text.split("\\s+");
        if (words.length != 2 && words.length != 4) {
            throw wrong("a bend such as 'x1 valley' or 'x3 row 2 mountain'", "'" + text + "'");
        }
        GridLine along = gridLine(words[0]);
        int band = 0;
        if (words.length == 4) {
            oneOf(words[1], along.axis() == Axis.UPRIGHT ? "row" : "column");
            band = number(words[2]);
            if (band == 0) {
                throw wrong("rows and columns counted from 1", "'" + text + "'");
            }
        }
        boolean valley = oneOf(words[words.length - 1], "valley", "mountain").equals("valley");
        return new FoldStep.Bend(along, band, valley);
    }

    private Cut cut(String text) {
        String[] words = text.split("\\s+");
        if (words.length != 5 || !words[1].equals("from") || !words[3].equals("to")) {
            throw wrong("a cut such as 'y1 from x1 to x3'", "'" + text + "'");
        }
        GridLine along = gridLine(words[0]);
        String crossing = along.axis() == Axis.UPRIGHT ? "y" : "x";
        return at(() -> new Cut(along, crossing(words[2], crossing), crossing(words[4], crossing)));
    }

    private int crossing(String word, String letter) {
        if (!word.startsWith(letter)) {
            throw wrong("a crossing line such as '" + letter + "1'", "'" + word + "'");
        }
        return number(word.substring(1));
    }

    private GridLine gridLine(String word) {
        if (!word.matches("[xy][1-9][0-9]?")) {
            throw wrong("a line such as 'x1' (between columns) or 'y1' (between rows)", "'" + word + "'");
        }
        return new GridLine(word.charAt(0) == 'x' ? Axis.UPRIGHT : Axis.LEVEL, number(word.substring(1)));
    }

    private List<Integer> numbers(String text) {
        return List.of(text.strip().split("\\s+")).stream().map(this::number).toList();
    }

    private int number(String word) {
        if (!word.matches("[0-9]{1,4}")) {
            throw wrong("a whole number", "'" + word + "'");
        }
        return Integer.parseInt(word);
    }

    private FoldScheme.Head edge(String word) {
        return FoldScheme.Head.valueOf(
                oneOf(word, "top", "right", "bottom", "left").toUpperCase(Locale.ROOT));
    }

    private List<FoldScheme.Head> edges(String text) {
        return text.isBlank() ? List.of() : List.of(text.strip().split("\\s+")).stream().map(this::edge)
                .toList();
    }

    private static List<String> parts(String text) {
        return List.of(text.split(",", -1)).stream().map(String::strip).toList();
    }

    private String oneOf(String word, String... allowed) {
        if (!List.of(allowed).contains(word)) {
            throw wrong(String.join(" or ", allowed), "'" + word + "'");
        }
        return word;
    }

    /** Puts the place in front of what a value says about itself. */
    private <T> T at(Supplier<T> value) {
        try {
            return value.get();
        } catch (IllegalArgumentException e) {
            throw new FoldException(name, line, e.getMessage());
        }
    }

    private FoldException wrong(String expected, String found) {
        return new FoldException(name, line, "expected " + expected + ", found " + found);
    }
}
