package org.fieldfold.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Translation;
import org.fieldfold.source.Finding;
import org.fieldfold.translation.Matching;

/** A translation has the figures of what it translates, each as often: a changed number is a wrong fact. */
final class TranslationNumbers implements TranslationRule {
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:[.,]\\d+)*|[¼½¾]");

    @Override
    public String id() {
        return "translation-numbers";
    }

    @Override
    public void check(TranslatedFile file, ContentBase base, Consumer<Finding> found) {
        for (Matching.Pair pair : file.matching().pairs()) {
            if (pair.state() != Matching.State.CURRENT) {
                continue;
            }
            Translation.Passage passage = pair.passage().orElseThrow();
            List<String> expected = numbers(pair.text().words());
            List<String> said = numbers(passage.words().orElseThrow().markdown());
            if (!expected.equals(said)) {
                found.accept(Finding.error(passage.place(), id(), "expected the numbers of the base text ("
                        + shown(expected) + "), found " + shown(said),
                        "write every number as the base has it, in figures, with its unit"));
            }
        }
    }

    /** The numbers of a text, sorted: another language may name them in another order. */
    static List<String> numbers(String words) {
        List<String> numbers = new ArrayList<>();
        Matcher number = NUMBER.matcher(words);
        while (number.find()) {
            numbers.add(number.group());
        }
        Collections.sort(numbers);
        return numbers;
    }

    private static String shown(List<String> numbers) {
        return numbers.isEmpty() ? "none" : String.join(", ", numbers);
    }
}
