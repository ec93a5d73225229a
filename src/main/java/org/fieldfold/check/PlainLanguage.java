package org.fieldfold.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.fieldfold.entry.Audience;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.Placed;
import org.fieldfold.prose.Ease;
import org.fieldfold.report.Reading;
import org.fieldfold.report.ReadingRow;

/**
 * How easy pocket texts and whole guides are to read. The formulas know only lengths: a name such as
 * 'cabbage caterpillars' counts as hard, so what they say is for the eye of a reviewer and no finding.
 */
public final class PlainLanguage {
    /** In fewer words than these one long name decides alone. */
    private static final int FEWEST_WORDS = 6;
    private static final int MOST_TEXTS = 100;

    private final ContentBase base;
    private final String language;
    private final Judging judging;
    private final Map<Facts.Of, List<JudgedText>> judged = new HashMap<>();

    /** Judges the texts of a record, or knows from an earlier time what they come to. */
    public interface Judging {
        /** @param judge judges them as they stand in a base, and says it in so many words and numbers */
        List<String> of(String record, Function<ContentBase, List<String>> judge);
    }

    private PlainLanguage(ContentBase base, String language, Judging judging) {
        this.base = base;
        this.language = language;
        this.judging = judging;
    }

    /** @param base in that language, {@code en} or {@code es} */
    public static Reading of(ContentBase base, String language) {
        return of(base, language, (record, judge) -> judge.apply(base));
    }

    /** The same; what is known of a record is not judged again. */
    public static Reading of(ContentBase base, String language, Judging judging) {
        PlainLanguage plain = new PlainLanguage(base, language, judging);
        return new Reading(language, plain.guides(), plain.texts());
    }

    private List<ReadingRow> guides() {
        List<ReadingRow> rows = new ArrayList<>();
        for (Placed<Guide> guide : base.guides().values()) {
            List<JudgedText> texts = texts(guide.value());
            Optional<Ease> ease = texts.stream().map(JudgedText::ease).reduce(Ease::and);
            long hard = texts.stream().filter(JudgedText::isHard).count();
            ease.ifPresent(whole -> rows.add(new ReadingRow(guide.value().title(), measure(whole),
                    whole.isPlain(language), hard + " of " + texts.size())));
        }
        return rows;
    }

    private List<JudgedText> texts(Guide guide) {
        boolean garden = guide.audience() == Audience.GARDEN;
        return Stream.concat(Stream.of(new Facts.Of("guides", guide.id())), guide.entries().stream().distinct()
                .filter(base.pests()::containsKey).map(id -> new Facts.Of("pests", id)))
                .flatMap(record -> judged(record).stream())
                .filter(text -> garden ? text.forGarden() : text.forField()).toList();
    }

    private List<ReadingRow> texts() {
        Set<JudgedText> all = new LinkedHashSet<>();
        base.guides().values().forEach(guide -> all.addAll(texts(guide.value())));
        return all.stream().filter(JudgedText::isHard).sorted(Comparator.comparing((JudgedText text) ->
                        strain(text.ease())).reversed().thenComparing(JudgedText.BY_PLACE))
                .limit(MOST_TEXTS).map(text -> new ReadingRow(text.place() + " " + text.key(),
                        measure(text.ease()), false, text.hardest())).toList();
    }

    /** The texts of a record, however many guides have it. */
    private List<JudgedText> judged(Facts.Of record) {
        return judged.computeIfAbsent(record, unjudged -> JudgedText.read(judging.of(record.name(), read ->
                JudgedText.written(judge(record, read)))));
    }

    private List<JudgedText> judge(Facts.Of record, ContentBase read) {
        List<Facts.Written> field = new ArrayList<>();
        List<Facts.Written> garden = new ArrayList<>();
        record.texts(read, text -> {
            if (text.words().codePoints().noneMatch(Character::isLetterOrDigit)) {
                return;
            }
            if (text.length().equals("pocket")) {
                field.add(text);
                garden.add(text);
            } else if (text.length().equals("garden") && !garden.isEmpty()) {
                garden.set(garden.size() - 1, text);
            }
        });
        return Stream.concat(field.stream(), garden.stream().filter(text -> !isIn(field, text))).map(text -> {
            Ease ease = Ease.of(text.words(), language);
            return JudgedText.of(text, isIn(field, text), isIn(garden, text), ease,
                    isHard(ease) ? hardest(text) : "");
        }).toList();
    }

    /** The same text, not only an equal one. */
    private static boolean isIn(List<Facts.Written> texts, Facts.Written text) {
        return texts.stream().anyMatch(one -> one == text);
    }

    private boolean isHard(Ease ease) {
        return ease.words() >= FEWEST_WORDS && !ease.isPlain(language);
    }

    private double measure(Ease ease) {
        return language.equals("es") ? ease.spanishEase() : ease.grade();
    }

    /** More is harder, in any language. */
    private double strain(Ease ease) {
        return language.equals("es") ? -ease.spanishEase() : ease.grade();
    }

    private String hardest(Facts.Written text) {
        return Ease.sentences(text.words()).stream()
                .filter(sentence -> sentence.codePoints().anyMatch(Character::isLetterOrDigit))
                .max(Comparator.comparing(sentence -> strain(Ease.of(sentence, language)))).orElse("");
    }
}
