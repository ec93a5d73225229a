package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.prose.Run;

/**
 * Writes one pest: what it looks like, what it does, what it is not, how to count, when it pays to act, then
 * the tiers in order, and whom to spare. The order is the same in the pocket and in the handbook.
 */
final class EntryWriter {
    private final ContentBase base;
    private final Reader reader;

    EntryWriter(ContentBase base, Reader reader) {
        this.base = base;
        this.reader = reader;
    }

    /** The section of an entry; {@code tab} is its number in the guide. */
    Section section(Placed<PestEntry> placed, int tab) {
        PestEntry entry = placed.value();
        LooksWriter looks = new LooksWriter(base, placed, reader);
        List<Block> blocks = new ArrayList<>();
        blocks.add(looks.title());
        looks.plates().ifPresent(blocks::add);
        looks.stages().ifPresent(blocks::add);
        looks.damage().ifPresent(blocks::add);
        looks.lookAlikes().ifPresent(blocks::add);
        entry.year().filter(year -> !reader.pocket()).ifPresent(year ->
                blocks.add(new Block.Paragraph(reader.read(year), List.of(), placed.at("year"))));
        blocks.addAll(new CountWriter(base, placed, reader).blocks());
        blocks.addAll(new TierWriter(base, placed, reader).blocks());
        spare(placed).ifPresent(block -> {
            blocks.add(new Block.Divider(block.origin()));
            blocks.add(block);
        });
        return new Section(entry.id(), Section.Kind.ENTRY, tab,
                Phrases.capital(entry.names().common()), blocks, placed.at("names", "common"));
    }

    private Optional<Block> spare(Placed<PestEntry> placed) {
        PestEntry entry = placed.value();
        if (entry.spare().isEmpty()) {
            return Optional.empty();
        }
        Line line = Line.of().strong(reader.say("enemies") + " ");
        for (int i = 0; i < entry.spare().size(); i++) {
            String id = entry.spare().get(i);
            String name = Optional.ofNullable(base.enemies().get(id))
                    .map(enemy -> enemy.value().names().common()).orElse(id);
            line.plain(i == 0 ? "" : ", ");
            line.add(reader.pocket() ? Run.plain(name) : Run.plain(name).to("#" + id));
        }
        return Optional.of(new Block.Paragraph(line.plain(".").runs(), List.of(), placed.at("spare")));
    }
}
