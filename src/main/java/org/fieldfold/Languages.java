package org.fieldfold;

import java.util.ArrayList;
import java.util.List;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Placed;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.source.Finding;

/** The languages of an edition: sheets can be written in those for which there are phrases. */
final class Languages {
    private static final String RULE = "unknown-word";

    private Languages() {
    }

    /** What is wrong with them; while something is, nothing can be set. */
    static List<Finding> findings(ContentBase base) {
        Placed<Edition> edition = base.edition();
        List<String> languages = edition.value().languages();
        List<Finding> findings = new ArrayList<>();
        if (languages.isEmpty()) {
            findings.add(Finding.error(edition.at("languages"), RULE, "expected at least one language, found none",
                    "write languages: [en]"));
        }
        for (int i = 0; i < languages.size(); i++) {
            String language = languages.get(i);
            if (!language.matches("[a-z]{2}") || !Phrases.speaks(language) || languages.indexOf(language) < i) {
                findings.add(Finding.error(edition.at("languages", i), RULE, "expected a language that sheets can be "
                        + "written in, each once, found '" + language + "'", "write en or es, or take it out"));
            }
        }
        return findings;
    }
}
