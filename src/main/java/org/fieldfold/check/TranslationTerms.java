package org.fieldfold.check;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.GlossaryTerm;
import org.fieldfold.source.Finding;
import org.fieldfold.translation.Matching;

/** A translation uses the one word that the glossary has for a word of the trade. */
final class TranslationTerms implements TranslationRule {
    private static final Pattern SPACE = Pattern.compile("\\s+");
    private static final Pattern TOKEN = Pattern.compile("[\\p{L}\\p{N}]+");

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

    /**
     * A text, and the same without capitals.
     *
     * @param tokens its runs of letters and digits, by which most words are quickly not found
     */
    private record Said(String text, String folded, Set<String> tokens) {
        static Said of(String text) {
            String line = SPACE.matcher(text).replaceAll(" ");
            String folded = TranslationTerms.folded(line);
            return new Said(line, folded, TOKEN.matcher(folded).results().map(MatchResult::group)
                    .collect(Collectors.toSet()));
        }
    }

    /**
     * A word of the glossary, without capitals and as a whole word.
     *
     * @param token its first run of letters and digits; a text without it has not the word either
     */
    private record Word(String folded, Optional<String> token, Pattern whole) {
        static Word of(String word) {
            String folded = TranslationTerms.folded(word);
            return new Word(folded, TOKEN.matcher(folded).results().map(MatchResult::group).findFirst(),
                    Pattern.compile("(?<![\\p{L}\\p{N}])" + Pattern.quote(word) + "(?![\\p{L}\\p{N}])",
                            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE));
        }

        boolean standsIn(Said said) {
            return (token.isEmpty() || said.tokens().contains(token.get())) && said.folded().contains(folded)
                    && whole.matcher(said.text()).find();
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
