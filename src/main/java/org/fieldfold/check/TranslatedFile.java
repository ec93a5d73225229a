package org.fieldfold.check;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Translation;
import org.fieldfold.source.Span;
import org.fieldfold.translation.BaseTexts;
import org.fieldfold.translation.Matching;

/**
 * The texts of one base file beside those of its translation.
 *
 * @param name of the base file, as in {@code pests/onion-thrips}
 * @param page the translation; empty when there is none
 */
record TranslatedFile(Translation translation, String name, Optional<Translation.Page> page, Matching matching) {
    /** Where one is asked for. */
    record Of(String language, String file) {
        TranslatedFile in(ContentBase base) {
            Translation translation = base.translations().getOrDefault(language,
                    new Translation(language, List.of(), new TreeMap<>()));
            Optional<Translation.Page> page = Optional.ofNullable(translation.files().get(file));
            return new TranslatedFile(translation, file, page, Matching.of(BaseTexts.of(base, file),
                    page.map(Translation.Page::passages).orElse(List.of())));
        }
    }

    /**
     * Every file of a translation, and of a language of the edition every file that should have one; where it
     * has none at all, the edition stands for all.
     */
    static Stream<Of> all(ContentBase base) {
        List<String> asked = languages(base);
        Set<String> languages = new TreeSet<>(base.translations().keySet());
        languages.addAll(asked);
        return languages.stream().flatMap(language -> {
            Translation translation = base.translations().get(language);
            Set<String> files = new TreeSet<>(translation == null ? Set.of() : translation.files().keySet());
            if (asked.contains(language)) {
                files.addAll(files.isEmpty() ? Set.of("edition") : BaseTexts.files(base));
            }
            return files.stream().map(file -> new Of(language, file));
        });
    }

    /** The languages into which an edition is translated. */
    static List<String> languages(ContentBase base) {
        return base.edition().value().languages().stream().skip(1).toList();
    }

    /** The beginning of the translation; where there is none, the place of a text in the base. */
    Span start(Matching.Pair pair) {
        return page.map(Translation.Page::start).orElse(pair.text().span());
    }
}
