package org.fieldfold.manuscript;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Units;
import org.fieldfold.trace.KeptResults;

/**
 * The handbook from one state of a base to the next: a page is written again only when something that was read
 * for it has changed. For one base in one language.
 */
public final class KeptPages {
    private final KeptResults<List<Page>> kept = new KeptResults<>();

    /**
     * The same book as {@link HandbookWriter#write} gives of the base in the order of names, in less time.
     *
     * @param content in its own language
     * @param hashes of the files that it was read from, by path
     * @param dates that were worked out before
     */
    public synchronized Book write(ContentBase content, Map<String, String> hashes, Phrases said, News news,
            Calendars dates) {
        ContentBase base = Alphabet.of(said.language()).order(content);
        Phrases phrases = said.with(Optional.of(Units.BOTH));
        KeptResults<List<Page>>.Round round = kept.round(base, hashes);
        String region = dates.named().toString();
        Book book = new HandbookWriter(base, said, news).write(false, (name, of, writing) -> round.take(name, of + region,
                read -> List.copyOf(writing.pages(new Register(read, phrases), dates.of(read)))));
        round.end();
        return book;
    }
}
