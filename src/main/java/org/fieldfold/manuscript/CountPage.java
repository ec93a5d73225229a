package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.entry.Audience;
import org.fieldfold.entry.Crop;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Threshold;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/** Writes all numbers to act at on one page, crop by crop. */
final class CountPage {
    private final Register register;
    private final Reader reader;

    CountPage(Register register, Reader reader) {
        this.register = register;
        this.reader = reader;
    }

    Page page() {
        Span origin = register.base().edition().at("title");
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Title(List.of(Run.plain(register.say("book.door.count"))),
                List.of(Run.plain(register.say("book.door.count.why"))), origin));
        blocks.add(new Block.Paragraph(List.of(Run.plain(register.say("next.flag"))), List.of(), origin));
        blocks.add(new Block.Paragraph(Line.of().plain(register.say("book.count.rounding") + " ")
                .add(Run.plain(register.say("book.page.walks")).to(Places.to(Places.WALKS))).plain(".").runs(),
                List.of(), origin));
        for (Placed<Crop> crop : register.base().crops().values()) {
            List<List<List<Run>>> rows = rows(crop.value().id());
            if (!rows.isEmpty()) {
                blocks.add(new Block.Heading(3, Line.of().add(Run.strong(crop.value().name())
                        .to(Places.to(Places.crop(crop.value().id())))).runs(), origin));
                blocks.add(new Block.Grid(register.say("book.count.caption", crop.value().name()), List.of(
                        head("book.count.pest"), head("book.count.act")), rows, origin));
            }
        }
        return new Page(Places.COUNT, Page.Kind.COUNT, register.say("book.door.count"), Places.START,
                List.of(new Page.Part("top", "", blocks)), origin);
    }

    private List<List<List<Run>>> rows(String crop) {
        List<List<List<Run>>> rows = new ArrayList<>();
        for (PestEntry pest : register.pestsOf(crop)) {
            Line name = Line.of().add(Run.strong(pest.names().common()).to(Places.to(pest.id()) + "/count"));
            PublishedNumber published = new PublishedNumber(register, pest);
            Optional<Threshold> first = pest.thresholds().stream()
                    .filter(one -> one.crop().isEmpty() || one.crop().get().equals(crop))
                    .filter(one -> Audience.FIELD.among(one.audiences())
                            || Audience.TUNNEL.among(one.audiences()))
                    .filter(one -> pest.cardOf(one, PestCounts.audience(one)).isPresent()).findFirst();
            first.ifPresent(one -> name.plain(" " + published.words(one) + only(one)));
            rows.add(List.of(name.runs(), first.map(published::onCard)
                    .orElse(List.of(Run.plain(register.say("book.count.see"))))));
        }
        return rows;
    }

    private String only(Threshold threshold) {
        String only = reader.only(threshold.audiences());
        return only.isEmpty() ? "" : " (" + only + ")";
    }

    private List<Run> head(String key) {
        return List.of(Run.strong(register.say(key)));
    }
}
