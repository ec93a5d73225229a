package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.entry.Contact;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.Placed;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/** Writes whom to ask: the county offices, then the publisher. */
final class OfficePage {
    private final Register register;

    OfficePage(Register register) {
        this.register = register;
    }

    Page page() {
        var edition = register.base().edition();
        Span origin = edition.at("contact");
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Title(List.of(Run.plain(register.say("book.door.office"))),
                List.of(Run.plain(register.say("book.door.office.why"))), origin));
        blocks.add(new Block.Notice(List.of(Run.strong(register.say("next.flag"))), origin));
        for (Placed<Office> office : register.base().offices().values()) {
            contact(blocks, office.value().name(), Optional.of(office.value().county()),
                    office.value().contact(), office.at("contact"));
        }
        contact(blocks, edition.value().publisher(), Optional.empty(), edition.value().contact(), origin);
        return new Page(Places.OFFICES, Page.Kind.OFFICE, register.say("book.page.offices"), Places.START,
                List.of(new Page.Part("top", "", blocks)), origin);
    }

    private void contact(List<Block> blocks, String name, Optional<String> county, Contact contact,
            Span origin) {
        blocks.add(new Block.Heading(3, List.of(Run.strong(name)), origin));
        List<Block.Fact> facts = new ArrayList<>();
        county.ifPresent(where -> facts.add(Block.Fact.of(register.say("book.office.county"), where)));
        facts.add(new Block.Fact(register.say("call"), List.of(Run.strong(contact.phone())
                .to("tel:" + contact.phone()))));
        facts.add(new Block.Fact(register.say("book.office.write"), List.of(Run.plain(contact.email())
                .to("mailto:" + contact.email()))));
        facts.add(Block.Fact.of(register.say("book.office.address"), String.join(", ", contact.address())));
        facts.add(Block.Fact.of(register.say("book.office.hours"), contact.hours()));
        if (!contact.people().isEmpty()) {
            facts.add(Block.Fact.of(register.say("book.office.people"), String.join(", ", contact.people())));
        }
        blocks.add(new Block.Facts(facts, origin));
    }
}
