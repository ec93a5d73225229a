package org.fieldfold.check;

import java.time.LocalDate;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Translation;
import org.fieldfold.source.Finding;
import org.fieldfold.translation.BaseText;
import org.fieldfold.translation.BaseTexts;
import org.fieldfold.translation.Matching;

/** A question that is put to the translations of one file after the other. */
interface TranslationRule extends Rule {
    /**
     * Puts the question.
     *
     * @param file the base file, as in {@code pests/onion-thrips}
     */
    void check(Translation translation, String file, Translation.Page page, Matching matching,
            Consumer<Finding> found);

    @Override
    default void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        if (base.translations().isEmpty()) {
            return;
        }
        SortedMap<String, List<BaseText>> texts = new TreeMap<>(BaseTexts.of(base));
        base.translations().values().forEach(translation -> translation.files().forEach((file, page) ->
                check(translation, file, page, Matching.of(texts.getOrDefault(file, List.of()),
                        page.passages()), found)));
    }
}
