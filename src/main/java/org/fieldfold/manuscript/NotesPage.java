package org.fieldfold.manuscript;

import java.util.List;
import java.util.stream.Stream;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/**
 * Writes what belongs into a field note, and into a request to name something. On paper one writes it by hand; where
 * a script runs, forms stand here.
 */
final class NotesPage {
    private final Register register;
    private final Span origin;

    NotesPage(Register register) {
        this.register = register;
        this.origin = register.base().edition().at("contact");
    }

    Page page() {
        return new Page(Places.NOTES, Page.Kind.REFERENCE, register.say("book.page.notes"), Places.START, List.of(
                new Page.Part("top", "", List.of(new Block.Title(List.of(Run.plain(register.say("book.page.notes"))),
                        List.of(Run.plain(register.say("book.page.notes.why"))), origin))),
                part("request", List.of("crop", "part", "seen", "count", "day", "place")),
                part("notes", List.of("day", "seen", "count", "place"))),
                origin);
    }

    private Page.Part part(String key, List<String> items) {
        return new Page.Part(key, register.say("notes." + key), List.of(
                new Block.Paragraph(Stream.of(Run.plain(register.say("notes." + key + ".why") + " "),
                        Run.plain(register.say("book.page.offices")).to(Places.to(Places.OFFICES))).toList(),
                        List.of(), origin),
                new Block.Items(false, items.stream().map(item -> List.of(Run.plain(
                        register.say("script.ask." + item)))).toList(), origin)));
    }
}
