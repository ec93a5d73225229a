package org.fieldfold.edition;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fieldfold.translation.BaseText;

/**
 * The texts of issued editions by what a translation names them by: what a text said when it was translated.
 */
public final class EarlierTexts {
    private final Map<String, String> byHash = new HashMap<>();

    /** @param ledgers of the editions that were issued */
    public static EarlierTexts of(Collection<Ledger> ledgers) {
        EarlierTexts texts = new EarlierTexts();
        ledgers.forEach(ledger -> ledger.facts().records().values().forEach(byId ->
                byId.values().forEach(known -> texts.add(known.facts()))));
        return texts;
    }

    /** The text with this hash; empty when no issued edition has one. */
    public Optional<String> of(String hash) {
        return Optional.ofNullable(byHash.get(hash));
    }

    private void add(Fact fact) {
        if (fact instanceof Fact.Word word) {
            add(word.text());
        } else if (fact instanceof Fact.Group group) {
            group.facts().values().forEach(this::add);
        } else {
            List<Fact> items = ((Fact.Items) fact).facts();
            items.forEach(this::add);
            add(items.stream().filter(Fact.Word.class::isInstance).map(item -> ((Fact.Word) item).text())
                    .collect(Collectors.joining(BaseText.BETWEEN)));
        }
    }

    private void add(String words) {
        byHash.put(BaseText.hash(words), words);
    }
}
