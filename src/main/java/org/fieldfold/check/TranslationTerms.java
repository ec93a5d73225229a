package org.fieldfold.check;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fieldfold.entry.GlossaryTerm;
import org.fieldfold.entry.Translation;
import org.fieldfold.source.Finding;
import org.fieldfold.translation.Matching;

/** A translation uses the one word that the glossary has for a word of the trade. */
final class TranslationTerms implements TranslationRule {
    /** Of the glossary's words, which are looked for in every text. */
    private final Map<String, Pattern> whole = new ConcurrentHashMap<>();

    @Override
    public String id() {
        return "translation-terms";
    }

    @Override
    public void check(Translation translation, String file, Translation.Page page, Matching matching,
            Consumer<Finding> found) {
        for (Matching.Pair pair : matching.pairs()) {
            if (pair.state() == Matching.State.CURRENT) {
                String said = pair.passage().orElseThrow().words().orElseThrow().markdown()
                        .replaceAll("\\s+", " ");
                Folded inBase = Folded.of(pair.text().words().replaceAll("\\s+", " "));
                Folded inText = Folded.of(said);
                translation.glossary().forEach(term -> check(term.words(), pair, inBase, inText, found));
            }
        }
    }

    /** A text, and the same without capitals, in which a word that is not there is quickly not found. */
    private record Folded(String text, String folded) {
        static Folded of(String text) {
            return new Folded(text, text.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT));
        }

        boolean mayHave(String word) {
            return folded.contains(word.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT));
        }
    }

    private void check(GlossaryTerm term, Matching.Pair pair, Folded base, Folded said,
            Consumer<Finding> found) {
        List<String> right = Stream.concat(Stream.of(term.term()), term.forms().stream()).toList();
        if (has(base, term.base()).isPresent() && has(said, right).isEmpty()) {
            found.accept(Finding.warning(pair.passage().orElseThrow().place(), id(), "expected '"
                    + term.term() + "' for '" + has(base, term.base()).get() + "', found none in “"
                    + Words.cut(said.text()) + "”", "use the word of the glossary, or give it this form there"));
        }
        has(said, term.avoid()).ifPresent(wrong -> found.accept(Finding.warning(
                pair.passage().orElseThrow().place(), id(), "expected '" + term.term() + "', found '" + wrong
                        + "'", "use the word of the glossary")));
    }

    /** The first of some words that stands in a text as a whole word, whatever its capitals. */
    private Optional<String> has(Folded text, List<String> words) {
        return words.stream().filter(text::mayHave).filter(word -> whole.computeIfAbsent(word, TranslationTerms::wholeWord)
                .matcher(text.text()).find()).findFirst();
    }

    private static Pattern wholeWord(String word) {
        return Pattern.compile("(?<![\\p{L}\\p{N}])" + Pattern.quote(word) + "(?![\\p{L}\\p{N}])",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }
}
