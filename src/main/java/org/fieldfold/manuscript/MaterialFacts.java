package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.fieldfold.entry.ActiveIngredient;

/** What one compares between materials, in the handbook's words. Never a rate: there is no field for one. */
final class MaterialFacts {
    private final Phrases phrases;

    MaterialFacts(Phrases phrases) {
        this.phrases = phrases;
    }

    List<Block.Fact> of(ActiveIngredient material) {
        List<Block.Fact> facts = new ArrayList<>();
        facts.add(Block.Fact.of(phrases.say("book.material.group"), group(material)));
        facts.add(Block.Fact.of(phrases.say("book.material.phi"), phi(material)));
        facts.add(Block.Fact.of(phrases.say("book.material.rei"), rei(material)));
        facts.add(Block.Fact.of(phrases.say("book.material.bees"), bees(material)));
        facts.add(Block.Fact.of(phrases.say("book.material.organic"), organic(material)));
        return facts;
    }

    String group(ActiveIngredient material) {
        return material.group().filter(group -> !group.toLowerCase(Locale.ROOT).equals("none"))
                .orElse(phrases.say("book.none"));
    }

    /** Days before harvest, over all labels. */
    String phi(ActiveIngredient material) {
        return material.phiDays().map(days -> phrases.count("book.days", days.to(),
                Figures.range(days.from(), days.to()))).orElse(phrases.say("book.see-label"));
    }

    /** Hours before anybody goes in, over all labels. */
    String rei(ActiveIngredient material) {
        return material.reiHours().map(hours -> phrases.count("book.hours", hours.to(),
                Figures.range(hours.from(), hours.to()))).orElse(phrases.say("book.see-label"));
    }

    String bees(ActiveIngredient material) {
        String hazard = material.bees().map(bees -> phrases.word("book.bees", bees))
                .orElse(phrases.say("book.see-label"));
        return material.beeNote().map(note -> hazard + ". " + note.full().words()).orElse(hazard);
    }

    String organic(ActiveIngredient material) {
        return phrases.word("book.organic", material.organic());
    }

    String signal(ActiveIngredient material) {
        String words = material.signalWords().stream().map(word -> phrases.word("signal-word", word))
                .collect(Collectors.joining(" · "));
        return words.isEmpty() ? phrases.say("book.see-label") : words;
    }
}
