package org.fieldfold.manuscript;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fieldfold.entry.ActiveIngredient;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.SeasonRotation;
import org.fieldfold.prose.Run;
import org.fieldfold.scouting.season.WaitingTimes;

/** Writes which listed materials still fit before harvest, and which group is kept for which brood. */
final class SeasonTables {
    private static final int[] DAYS_BEFORE = {1, 3, 7, 14};
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
            blocks.add(waits(materials));
        }
        placed.value().rotation().ifPresent(rotation -> blocks.addAll(rotation(rotation)));
        return blocks;
    }

    private List<ActiveIngredient> materials() {
        return placed.value().controls().stream().filter(control -> control.tier() == 3)
                .map(control -> ((Control.Insecticide) control).material()).distinct()
                .map(register.base().materials()::get).filter(Objects::nonNull).map(Placed::value)
                .filter(material -> material.waitingTimes().isPresent()).toList();
    }

    /** By days before harvest: what every label lets fit, and what some do; the rest comes too late. */
    private Block waits(List<ActiveIngredient> materials) {
        List<List<List<Run>>> rows = new ArrayList<>();
        List<List<Run>> before = List.of();
        for (int days : DAYS_BEFORE) {
            List<List<Run>> fitting = List.of(names(materials, days, WaitingTimes.Fit.BY_ANY_LABEL),
                    names(materials, days, WaitingTimes.Fit.READ_THE_LABEL));
            // what holds for fewer days holds on until the next row
            if (!fitting.equals(before)) {
                rows.add(List.of(List.of(Run.strong(register.phrases().count("wait.before", days, days))),
                        fitting.get(0), fitting.get(1)));
            }
            before = fitting;
        }
        return new Block.Grid(register.say("wait.caption"), List.of(head("wait.harvest"),
                head("wait.by-any-label"), head("wait.read-the-label")), rows, placed.at("controls"));
    }

    private static List<Run> names(List<ActiveIngredient> materials, int days, WaitingTimes.Fit fit) {
        String names = materials.stream().filter(material -> material.waitingTimes().orElseThrow()
                .before(USED.plusDays(days), USED) == fit).map(ActiveIngredient::name)
                .collect(Collectors.joining(", "));
        return List.of(Run.plain(names.isEmpty() ? "–" : names));
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
