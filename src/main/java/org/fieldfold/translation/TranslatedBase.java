package org.fieldfold.translation;

import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Translation;
import org.fieldfold.prose.Prose;
import org.fieldfold.source.Span;
import org.fieldfold.source.Spans;

/**
 * The base in another language: the same records with other texts, so that whatever is written from a base
 * can be written from this one. A text without a current translation stands in the base language, with a mark
 * before it, and its runs say which language that is. A translated text's place is that of the translation.
 */
public final class TranslatedBase {
    private final ContentBase base;
    private final String baseLanguage;
    private final Map<String, Map<String, Matching.Pair>> files = new HashMap<>();

    private TranslatedBase(ContentBase base, String baseLanguage, String language) {
        this.base = base;
        this.baseLanguage = baseLanguage;
        Translation translation = base.translations().get(language);
        BaseTexts.of(base).forEach((file, texts) -> {
            Translation.Page page = translation == null ? null : translation.files().get(file);
            Map<String, Matching.Pair> byPath = new HashMap<>();
            Matching.of(texts, page == null ? List.of() : page.passages()).pairs()
                    .forEach(pair -> byPath.put(pair.text().path(), pair));
            files.put(file, byPath);
        });
    }

    /** The base in a language; the base itself in its own, which is the first of its edition. */
    public static ContentBase in(ContentBase base, String language) {
        List<String> languages = base.edition().value().languages();
        return languages.isEmpty() || languages.get(0).equals(language) ? base
                : new TranslatedBase(base, languages.get(0), language).whole();
    }

    /**
     * The file of a language in which the texts of a record are translated, as its translation names it.
     *
     * @param component of the base, or {@code edition}
     * @return empty for records without texts
     */
    public static Optional<String> file(String component, String id) {
        return component.equals(Document.EDITION.file()) ? Optional.of(component)
                : Optional.of(component).filter(Document::holds).map(part -> Document.of(part, id).file());
    }

    private ContentBase whole() {
        Map<String, Object> said = new LinkedHashMap<>(TextWalk.components(base));
        said.put("edition", said(base.edition(), Document.EDITION));
        said.replaceAll((name, value) ->
                Document.holds(name) ? records(name, (SortedMap<?, ?>) value) : value);
        return TextWalk.built(ContentBase.class, said.values().toArray());
    }

    private SortedMap<String, Placed<?>> records(String component, SortedMap<?, ?> records) {
        SortedMap<String, Placed<?>> said = new TreeMap<>();
        records.forEach((id, placed) -> said.put((String) id,
                said((Placed<?>) placed, Document.of(component, (String) id))));
        return Collections.unmodifiableSortedMap(said);
    }

    private <T> Placed<T> said(Placed<T> placed, Document document) {
        Map<String, Span> places = new HashMap<>(placed.spans().byPath());
        Map<String, Matching.Pair> pairs = files.getOrDefault(document.file(), Map.of());
        TextWalk walk = new TextWalk(new TextWalk.Change() {
            @Override
            public Prose prose(TextWalk.Place place, Prose was) {
                return current(place).flatMap(Translation.Passage::words)
                        .orElseGet(() -> BaseLanguage.marked(was, baseLanguage));
            }

            @Override
            public String line(TextWalk.Place place, String was, boolean optional) {
                return current(place).flatMap(Translation.Passage::words)
                        .map(words -> words.markdown().replaceAll("\\s+", " "))
                        .orElseGet(() -> optional ? was : BaseLanguage.marked(was, baseLanguage));
            }

            private Optional<Translation.Passage> current(TextWalk.Place place) {
                Optional<Translation.Passage> passage = Optional.ofNullable(pairs.get(place.path()))
                        .filter(pair -> pair.state() == Matching.State.CURRENT)
                        .flatMap(Matching.Pair::passage);
                passage.ifPresent(known -> put(place.spanPath(), known.place()));
                return passage;
            }

            /** A text in several lengths is looked for under its own key as well. */
            private void put(String path, Span place) {
                places.put(path, place);
                if (path.endsWith("/pocket")) {
                    places.put(path.substring(0, path.lastIndexOf('/')), place);
                }
            }
        });
        @SuppressWarnings("unchecked")
        T value = (T) walk.walk(placed.value(), new TextWalk.Place(document.prefix(), ""));
        return new Placed<>(value, new Spans(placed.spans().file(), places));
    }
}
