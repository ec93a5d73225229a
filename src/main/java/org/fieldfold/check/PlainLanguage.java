package org.fieldfold.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.fieldfold.entry.Audience;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.prose.Ease;
import org.fieldfold.report.Reading;
import org.fieldfold.report.ReadingRow;
import org.fieldfold.source.SourceFile;

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
    private final Map<String, List<Facts.Written>> byFile = new LinkedHashMap<>();
    private final Map<String, List<Facts.Written>> gardenByFile = new LinkedHashMap<>();
    private final Counting counting;
    private final Map<String, Ease> counted = new HashMap<>();
    private final Set<String> countedFiles = new HashSet<>();

    /** Counts texts, or knows from an earlier count what they come to. */
    public interface Counting {
        /** @param count counts them, in order */
        List<Ease> of(List<String> texts, String language, Supplier<List<Ease>> count);
    }

    private PlainLanguage(ContentBase base, String language, Counting counting) {
        this.base = base;
        this.language = language;
        this.counting = counting;
        Facts.texts(base, text -> {
            String file = record(text.span().file());
            List<Facts.Written> field = byFile.computeIfAbsent(file, none -> new ArrayList<>());
            List<Facts.Written> garden = gardenByFile.computeIfAbsent(file, none -> new ArrayList<>());
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
    }

    /** The same for a file and its translation: folder and name. */
    private static String record(SourceFile file) {
        String[] path = file.path().split("/");
        return String.join("/", List.of(path).subList(Math.max(0, path.length - 2), path.length));
    }

    /** @param base in that language, {@code en} or {@code es} */
    public static Reading of(ContentBase base, String language) {
        return of(base, language, (texts, of, count) -> count.get());
    }

    /** The same; what is known of texts is not counted again. */
    public static Reading of(ContentBase base, String language, Counting counting) {
        PlainLanguage plain = new PlainLanguage(base, language, counting);
        return new Reading(language, plain.guides(), plain.texts());
    }

    private List<ReadingRow> guides() {
        List<ReadingRow> rows = new ArrayList<>();
        for (Placed<Guide> guide : base.guides().values()) {
            List<Facts.Written> texts = texts(guide);
            Optional<Ease> ease = texts.stream().map(this::ease).reduce(Ease::and);
            long hard = texts.stream().filter(this::isHard).count();
            ease.ifPresent(whole -> rows.add(new ReadingRow(guide.value().title(), measure(whole),
                    whole.isPlain(language), hard + " of " + texts.size())));
        }
        return rows;
    }

    private List<Facts.Written> texts(Placed<Guide> guide) {
        Map<String, List<Facts.Written>> known =
                guide.value().audience() == Audience.GARDEN ? gardenByFile : byFile;
        Set<SourceFile> files = new HashSet<>();
        List<Facts.Written> texts = new ArrayList<>(known.getOrDefault(record(guide.spans().file()),
                List.of()));
        for (String entry : guide.value().entries()) {
            Placed<PestEntry> pest = base.pests().get(entry);
            if (pest != null && files.add(pest.spans().file())) {
                texts.addAll(known.getOrDefault(record(pest.spans().file()), List.of()));
            }
        }
        count(guide.spans().file());
        files.forEach(this::count);
        return texts;
    }

    /** The texts of a file together, and each once, however many guides have it. */
    private void count(SourceFile of) {
        String file = record(of);
        if (countedFiles.add(file)) {
            List<String> texts = Stream.of(byFile, gardenByFile)
                    .flatMap(known -> known.getOrDefault(file, List.of()).stream())
                    .map(Facts.Written::words).distinct().toList();
            List<Ease> eases = counting.of(texts, language, () ->
                    texts.stream().map(text -> Ease.of(text, language)).toList());
            for (int i = 0; i < texts.size(); i++) {
                counted.put(texts.get(i), eases.get(i));
            }
        }
    }

    private List<ReadingRow> texts() {
        Set<Facts.Written> all = new LinkedHashSet<>();
        base.guides().values().forEach(guide -> all.addAll(texts(guide)));
        return all.stream().filter(this::isHard).sorted(Comparator.comparing((Facts.Written text) ->
                        strain(ease(text))).reversed().thenComparing(Facts.Written::span))
                .limit(MOST_TEXTS).map(text -> new ReadingRow(text.span().place() + " " + text.key(),
                        measure(ease(text)), false, hardest(text))).toList();
    }

    private Ease ease(Facts.Written text) {
        return Objects.requireNonNull(counted.get(text.words()), "texts are counted before they are judged");
    }

    private boolean isHard(Facts.Written text) {
        Ease ease = ease(text);
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
