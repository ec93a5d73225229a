package org.fieldfold.manuscript;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.entry.ActiveIngredient;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.SeasonRotation;
import org.fieldfold.prose.Run;
import org.fieldfold.scouting.season.WaitingTimes;

/** Writes which listed materials still fit before harvest, and which group is kept for which brood. */
final class SeasonTables {
    private static final int[] DAYS_BEFORE = {1, 3, 7, 14, 21};
    /** Any evening will do: only the distance to harvest counts. */
    private static final LocalDateTime USED = LocalDateTime.of(2000, 7, 1, 20, 0);

    private final Register register;
    private final Placed<PestEntry> placed;

    SeasonTables(Register register, Placed<PestEntry> placed) {
        this.register = register;
        this.placed = placed;
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        List<ActiveIngredient> materials = materials();
        if (!materials.isEmpty()) {
            blocks.add(new Block.Heading(4, List.of(Run.strong(register.say("wait.title"))),
                    placed.at("controls")));
            blocks.add(new Block.Paragraph(Line.of().strong(register.say("caution.tier3")).plain(" ")
                    .plain(register.say("wait.how")).runs(), List.of(), placed.at("controls")));
            blocks.add(waits(materials));
        }
        placed.value().rotation().ifPresent(rotation -> blocks.addAll(rotation(rotation)));
        return blocks;
    }

    private List<ActiveIngredient> materials() {
        return placed.value().controls().stream().filter(control -> control.tier() == 3)
                .map(control -> ((Control.Insecticide) control).material()).distinct()
                .map(register.base().materials()::get).filter(java.util.Objects::nonNull).map(Placed::value)
                .filter(material -> material.waitingTimes().isPresent()).toList();
    }

    private Block waits(List<ActiveIngredient> materials) {
        MaterialFacts facts = new MaterialFacts(register.phrases());
        List<List<Run>> header = new ArrayList<>();
        header.add(List.of(Run.strong(register.say("book.material.name"))));
        header.add(List.of(Run.strong(register.say("book.material.phi"))));
        header.add(List.of(Run.strong(register.say("book.material.rei"))));
        for (int days : DAYS_BEFORE) {
            header.add(List.of(Run.strong(register.phrases().count("wait.before", days, days))));
        }
        List<List<List<Run>>> rows = new ArrayList<>();
        for (ActiveIngredient material : materials) {
            List<List<Run>> row = new ArrayList<>();
            row.add(List.of(Run.strong(material.name())));
            row.add(List.of(Run.plain(facts.phi(material))));
            row.add(List.of(Run.plain(facts.rei(material))));
            for (int days : DAYS_BEFORE) {
                WaitingTimes.Fit fit = material.waitingTimes().orElseThrow()
                        .before(USED.plusDays(days), USED);
                row.add(List.of(Run.plain(register.phrases().word("wait", fit))));
            }
            rows.add(row);
        }
        return new Block.Grid(register.say("wait.caption"), header, rows, placed.at("controls"));
    }

    private List<Block> rotation(SeasonRotation rotation) {
        MaterialFacts facts = new MaterialFacts(register.phrases());
        List<List<List<Run>>> rows = new ArrayList<>();
        for (SeasonRotation.Brood brood : rotation.broods()) {
            Line names = Line.of();
            Line groups = Line.of();
            for (String id : brood.materials()) {
                Optional<ActiveIngredient> material = Optional.ofNullable(register.base().materials().get(id))
                        .map(Placed::value);
                names.plain(names.isEmpty() ? "" : ", ")
                        .strong(material.map(ActiveIngredient::name).orElse(id));
                material.ifPresent(known -> groups.plain(groups.isEmpty() ? "" : ", ")
                        .plain(facts.group(known)));
            }
            rows.add(List.of(List.of(Run.plain(brood.name())), names.isEmpty()
                    ? List.of(Run.plain(register.say("rotation.none"))) : names.runs(), groups.runs()));
        }
        return List.of(new Block.Grid(register.say("rotation.caption"), List.of(head("rotation.brood"),
                head("rotation.material"), head("book.material.group")), rows, placed.at("rotation")),
                new Block.Paragraph(Line.of().plain(register.say("rotation.why", rotation.mostUses()) + " ")
                        .add(register.brief(rotation.source())).plain(".").runs(), List.of(),
                        placed.at("rotation")));
    }

    private List<Run> head(String key) {
        return List.of(Run.strong(register.say(key)));
    }
}
