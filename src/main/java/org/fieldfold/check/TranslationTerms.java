package org.fieldfold.check;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.GlossaryTerm;
import org.fieldfold.source.Finding;
import org.fieldfold.translation.Matching;

/** A translation uses the one word that the glossary has for a word of the trade. */
final class TranslationTerms implements TranslationRule {
    private static final Pattern SPACE = Pattern.compile("\\s+");

    /** The words of glossaries as they are looked for in every text: worked out once. */
    private final Map<String, Word> words = new ConcurrentHashMap<>();

    @Override
    public String id() {
        return "translation-terms";
    }

    @Override
    public void check(TranslatedFile file, ContentBase base, Consumer<Finding> found) {
        for (Matching.Pair pair : file.matching().pairs()) {
            if (pair.state() == Matching.State.CURRENT) {
                Said inBase = Said.of(pair.text().words());
                Said inText = Said.of(pair.passage().orElseThrow().words().orElseThrow().markdown());
                file.translation().glossary().forEach(term ->
                        check(term.words(), pair, inBase, inText, found));
            }
        }
    }

    /** A text, and the same without capitals, in which a word that is not there is quickly not found. */
    private record Said(String text, String folded) {
        static Said of(String text) {
            String line = SPACE.matcher(text).replaceAll(" ");
            return new Said(line, TranslationTerms.folded(line));
        }
    }

    /** A word of the glossary, without capitals and as a whole word. */
    private record Word(String folded, Pattern whole) {
        static Word of(String word) {
            return new Word(TranslationTerms.folded(word), Pattern.compile("(?<![\\p{L}\\p{N}])"
                    + Pattern.quote(word) + "(?![\\p{L}\\p{N}])",
                    Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE));
        }

        boolean standsIn(Said said) {
            return said.folded().contains(folded) && whole.matcher(said.text()).find();
        }
    }

    private static String folded(String text) {
        return text.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT);
    }

    private void check(GlossaryTerm term, Matching.Pair pair, Said base, Said said, Consumer<Finding> found) {
        Optional<String> named = first(base, term.base());
        if (named.isPresent() && !has(said, term.term()) && first(said, term.forms()).isEmpty()) {
            found.accept(Finding.warning(pair.passage().orElseThrow().place(), id(), "expected '"
                    + term.term() + "' for '" + named.get() + "', found none in “"
                    + Words.cut(said.text()) + "”", "use the word of the glossary, or give it this form there"));
        }
        first(said, term.avoid()).ifPresent(wrong -> found.accept(Finding.warning(
                pair.passage().orElseThrow().place(), id(), "expected '" + term.term() + "', found '" + wrong
                        + "'", "use the word of the glossary")));
    }

    /** The first of some words that stands in a text as a whole word, whatever its capitals. */
    private Optional<String> first(Said text, List<String> words) {
        for (String word : words) {
            if (has(text, word)) {
                return Optional.of(word);
            }
        }
        return Optional.empty();
    }

    private boolean has(Said text, String word) {
        return words.computeIfAbsent(word, Word::of).standsIn(text);
    }
}
