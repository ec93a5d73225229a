package org.fieldfold.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Translation;
import org.fieldfold.translation.BaseText;
import org.fieldfold.translation.BaseTexts;
import org.fieldfold.translation.Matching;

/**
 * The working file of a translator: every text of a base file in its order, the base text in a comment above
 * its translation. What is translated is kept; what is due keeps its old hash and shows the new one, and
 * above the text as it is now the one that was translated, where an issued edition has it.
 */
final class TranslationDraft {
    private final String language;
    private final Function<String, Optional<String>> earlier;
    private final StringBuilder out = new StringBuilder();

    private TranslationDraft(String language, Function<String, Optional<String>> earlier) {
        this.language = language;
        this.earlier = earlier;
    }

    /**
     * The files of a language as they should stand now.
     *
     * @param file one base file, as in {@code pests/onion-thrips}, or empty for all
     * @param earlier what a text said when it was translated, by its hash then; empty when nobody knows
     */
    static List<Draft> of(ContentBase base, String language, Optional<String> file,
            Function<String, Optional<String>> earlier) {
        if (!language.matches("[a-z]{2}")) {
            throw new IllegalArgumentException("expected a language as in es, found '" + language + "'");
        }
        SortedMap<String, List<BaseText>> files = BaseTexts.of(base);
        String name = file.map(given -> given.replaceFirst("\\.(yaml|md)$", "")).orElse("");
        if (file.isPresent() && !files.containsKey(name)) {
            throw new IllegalArgumentException("expected a file of the content base that has texts, as in "
                    + "pests/onion-thrips, found '" + name + "'; "
                    + Nearest.hint(name, files.keySet(), "'fieldfold check' shows what cannot be read"));
        }
        SortedMap<String, Translation.Page> known = Optional.ofNullable(base.translations().get(language))
                .map(Translation::files).orElse(new TreeMap<>());
        List<Draft> drafts = new ArrayList<>();
        files.forEach((path, texts) -> {
            List<Translation.Passage> passages = Optional.ofNullable(known.get(path))
                    .map(Translation.Page::passages).orElse(List.of());
            List<BaseText> asked = texts.stream().filter(text -> isAsked(text, passages)).toList();
            if ((file.isEmpty() || name.equals(path)) && !asked.isEmpty()) {
                drafts.add(new Draft(language + "/" + path + ".yaml",
                        new TranslationDraft(language, earlier).write(path, Matching.of(asked, passages))));
            }
        });
        return drafts;
    }

    /** Words that may stay as they are have no place in the file until somebody translates them. */
    private static boolean isAsked(BaseText text, List<Translation.Passage> passages) {
        return !text.optional() || passages.stream().anyMatch(passage -> passage.path().equals(text.path()));
    }

    private String write(String file, Matching matching) {
        int open = (int) matching.pairs().stream()
                .filter(pair -> pair.state() != Matching.State.CURRENT).count();
        out.append("# Texts of ").append(file).append(" in language ").append(language).append(open == 0
                ? ": all translated.\n" : ": " + open + " to do, each marked TO DO.\n");
        out.append("# A comment shows the text of the base. Write behind 'text:'; once it says the same as the "
                + "base, set 'of:'\n# to the hash in the comment. 'fieldfold draft translation ")
                .append(language).append(' ').append(file).append("' brings this file up to date.\n");
        matching.pairs().forEach(this::pair);
        if (!matching.left().isEmpty()) {
            out.append("# Nothing in the base answers to what follows: move it or delete it.\n");
            matching.left().forEach(left -> text(left.path(), left.of(), left.words().map(words ->
                    words.markdown()).orElse(""), false));
        }
        return out.toString();
    }

    private void pair(Matching.Pair pair) {
        BaseText text = pair.text();
        String now = pair.passage().flatMap(Translation.Passage::words).map(words -> words.markdown())
                .orElse("");
        out.append(text.path()).append(":\n");
        switch (pair.state()) {
            case CURRENT -> { }
            case MISSING -> out.append("  # TO DO\n");
            case DUE -> {
                out.append("  # TO DO: the base has changed; its text is now ").append(text.hash()).append('\n');
                earlier.apply(pair.passage().get().of()).ifPresent(was -> {
                    out.append("  # translated was:\n");
                    comment(was);
                    out.append("  # and it is now:\n");
                });
            }
        }
        comment(text.words());
        body(pair.state() == Matching.State.DUE ? pair.passage().get().of() : text.hash(), now,
                text.oneLine());
    }

    private void comment(String words) {
        for (String line : words.split("\n")) {
            Wrapped.lines(line, Wrapped.COLUMNS - 4).forEach(part ->
                    out.append(part.isEmpty() ? "  #" : "  # " + part).append('\n'));
        }
    }

    private void text(String path, String of, String words, boolean oneLine) {
        out.append(path).append(":\n");
        body(of, words, oneLine);
    }

    private void body(String of, String words, boolean oneLine) {
        out.append("  of: ").append(of).append("\n  text:");
        List<String> lines = new ArrayList<>();
        if (words.indexOf('\n') >= 0) {
            lines.addAll(List.of(words.stripTrailing().split("\n")));
        } else if (!oneLine && words.length() > Wrapped.COLUMNS - 10) {
            lines.addAll(Wrapped.lines(words, Wrapped.COLUMNS - 4));
        }
        if (lines.isEmpty()) {
            out.append(words.isEmpty() ? "" : " " + quoted(words)).append('\n');
        } else {
            out.append(" |\n");
            lines.forEach(line -> out.append(line.isBlank() ? "" : "    " + line.stripTrailing())
                    .append('\n'));
        }
    }

    /** In quotes where YAML would take the words for something else. */
    private static String quoted(String words) {
        boolean plain = words.matches("[\\p{L}¿¡(][^#:\"\\\\]*") && !words.endsWith(" ")
                && !words.matches("(?i)true|false|yes|no|null|on|off|y|n");
        return plain ? words : "\"" + words.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
