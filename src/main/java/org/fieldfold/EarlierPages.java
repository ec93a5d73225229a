package org.fieldfold;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.content.InputFile;
import org.fieldfold.edition.KeptRereadings;
import org.fieldfold.edition.Ledger;
import org.fieldfold.edition.Rereadings;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.kept.Kept;
import org.fieldfold.kept.Key;
import org.fieldfold.manuscript.Book;
import org.fieldfold.manuscript.KeptPages;
import org.fieldfold.manuscript.News;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.translation.TranslatedBase;

/**
 * What the pages of a build take from earlier ones.
 *
 * @param hashes of the files that the base was read from, by path
 */
record EarlierPages(Path content, Kept kept, Map<String, String> hashes) {
    static EarlierPages of(Path content, Kept kept, List<InputFile> inputs) {
        return new EarlierPages(content, kept, InputFile.hashes(inputs));
    }

    /** @param last the last edition that was issued before this one */
    Rereadings rereadings(ContentBase base, Optional<Ledger> last) {
        if (!kept.isKeeping()) {
            return Rereadings.of(base, last);
        }
        Optional<Key> key = EarlierBuilds.key("rereadings", content, kept);
        KeptRereadings earlier = kept.left(key).map(KeptRereadings::new).orElseGet(KeptRereadings::new);
        Rereadings rereadings = earlier.of(base, last, hashes);
        earlier.bytes().ifPresent(bytes -> kept.leave(key, bytes));
        return rereadings;
    }

    /** The handbook's manuscript in a language; what is known of it now is left to later builds. */
    Book book(Tongues tongues, Phrases phrases, News news, boolean proof) {
        String language = phrases.language();
        KeptPages pages = new KeptPages(made -> kept.key("page", made).map(Key::hash));
        Optional<Key> key = EarlierBuilds.key("pages " + language, content, kept);
        kept.left(key).ifPresent(pages::goOn);
        ContentBase base = tongues.base();
        ContentBase said = tongues.in(language);
        Calendars dates = tongues.calendars(language);
        Book book = said == base ? pages.write(base, hashes, phrases, news, dates, proof)
                : pages.write(said, base, TranslatedBase::file, hashes, phrases, news, dates, proof);
        if (kept.isKeeping() && !pages.isAsWritten()) {
            kept.leave(key, pages.bytes());
        }
        return book;
    }
}
