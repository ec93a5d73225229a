package org.fieldfold;

import java.util.ArrayList;
import java.util.List;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.Placed;
import org.fieldfold.kept.Kept;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.pdf.Press;

/** Every form of a base in its own language and others, as builds print them. */
final class AllForms {
    private final Tongues tongues;
    private final Press press;
    private final boolean proof;

    AllForms(ContentBase base, Press press, boolean proof) {
        this.tongues = new Tongues(base);
        this.press = press;
        this.proof = proof;
    }

    /** Those that are printed first, then large print and posters; in all languages. */
    List<Form> all() {
        List<Form> all = new ArrayList<>();
        tongues.languages().forEach(language -> all.addAll(first(language)));
        Edition edition = tongues.base().edition().value();
        for (String language : tongues.languages()) {
            ContentBase said = tongues.in(language);
            Forms forms = new Forms(said, press, proof);
            said.guides().values().forEach(guide -> SetGuides.papers(guide.value(), edition).forEach(paper ->
                    all.addAll(forms.of(guide, Phrases.in(language).with(edition.units()), paper))));
        }
        return all;
    }

    /** Those that are printed first, in a language that the edition need not speak. */
    List<Form> first(String language) {
        ContentBase said = tongues.in(language);
        List<Form> first = new ArrayList<>(FirstSheets.generic(said, new PrintRoom(press, Kept.nothing()), proof,
                Phrases.in(language)));
        for (Placed<Office> office : said.offices().values()) {
            if (FirstSheets.firstOf(office.value(), tongues.languages()).equals(language)) {
                first.addAll(FirstSheets.of(office, "offices/" + office.value().id() + "/", said, press, proof,
                        Phrases.in(language)));
            }
        }
        return first;
    }
}
