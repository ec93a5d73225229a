package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fieldfold.entry.ActiveIngredient;
import org.fieldfold.entry.BeeHazard;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Text;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/**
 * Writes what can be done, tier 1 before 2 before 3. This is the only place where measures become words, so their
 * order holds everywhere, and tier 3 never stands without its caution.
 */
final class TierWriter {
    private final ContentBase base;
    private final Placed<PestEntry> placed;
    private final PestEntry entry;
    private final Reader reader;

    TierWriter(ContentBase base, Placed<PestEntry> placed, Reader reader) {
        this.base = base;
        this.placed = placed;
        this.entry = placed.value();
        this.reader = reader;
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        for (int tier = 1; tier <= 3; tier++) {
            List<Control> controls = entry.controlsFor(reader.audience(), tier);
            if (!controls.isEmpty()) {
                blocks.add(tier(tier, controls));
            }
        }
        return blocks;
    }

    private Block.Tier tier(int tier, List<Control> controls) {
        Optional<String> condition = condition(controls);
        String name = reader.say("tier." + tier);
        String heading = condition.map(when -> reader.say("tier.head.when", tier, name, when))
                .orElseGet(() -> reader.say("tier.head", tier, name));
        List<Block.Measure> measures = new ArrayList<>();
        for (Control control : controls) {
            measures.add(new Block.Measure(words(control, condition.isPresent()), at(control)));
        }
        return new Block.Tier(tier, List.of(Run.strong(heading)), measures,
                tier == 3 ? caution() : List.of(), at(controls.get(0)));
    }

    /** The condition that all materials share: it is said once, in the heading. */
    private Optional<String> condition(List<Control> controls) {
        List<String> all = controls.stream().map(control -> control instanceof Control.Insecticide material
                ? material.when().map(when -> when.pocketFor(reader.audience()).words()).orElse("") : "")
                .distinct().toList();
        return all.size() == 1 && !all.get(0).isEmpty() ? Optional.of(all.get(0)) : Optional.empty();
    }

    private List<Run> words(Control control, boolean conditionSaid) {
        if (control instanceof Control.Cultural cultural) {
            return linked(cultural.measure(), cultural.practice());
        }
        if (control instanceof Control.Exclusion exclusion) {
            Line line = Line.of().add(linked(exclusion.measure(), exclusion.practice().or(exclusion::enemy)));
            exclusion.comesOff().ifPresent(off -> line.sentence(reader.read(off)));
            return line.runs();
        }
        return material((Control.Insecticide) control, conditionSaid);
    }

    private List<Run> linked(Text measure, Optional<String> page) {
        List<Run> runs = reader.read(measure);
        if (reader.pocket() || page.isEmpty() || runs.isEmpty()) {
            return runs;
        }
        Line line = Line.of().add(runs);
        return line.plain(" ").add(Run.plain(pageName(page.get())).to("#" + page.get())).plain(".").runs();
    }

    private String pageName(String id) {
        if (base.practices().containsKey(id)) {
            return base.practices().get(id).value().name();
        }
        return base.enemies().containsKey(id) ? base.enemies().get(id).value().names().common() : id;
    }

    private List<Run> material(Control.Insecticide use, boolean conditionSaid) {
        Optional<ActiveIngredient> known = Optional.ofNullable(base.materials().get(use.material()))
                .map(Placed::value);
        Line line = Line.of().strong(known.map(ActiveIngredient::name).orElse(use.material()));
        known.ifPresent(material -> line.plain(facts(material)));
        if (!conditionSaid) {
            use.when().ifPresent(when -> line.plain(", ").add(reader.read(when)));
        }
        use.bees().ifPresent(bees -> line.plain(". ").add(reader.read(bees)));
        if (use.bees().isEmpty()) {
            line.plain(".");
        }
        if (!reader.pocket()) {
            use.note().ifPresent(note -> line.sentence(reader.read(note)));
        }
        return line.runs();
    }

    /** Group, waiting times and bees, in that order: what one compares between materials. */
    private String facts(ActiveIngredient material) {
        List<String> facts = new ArrayList<>();
        material.group().ifPresent(group -> facts.add(group.toLowerCase(Locale.ROOT).equals("none")
                ? reader.say("group.none") : reader.say("group", group)));
        material.phiDays().ifPresent(days -> facts.add(reader.say("material.phi",
                Figures.range(days.from(), days.to()))));
        material.reiHours().ifPresent(hours -> facts.add(reader.say("material.rei",
                Figures.range(hours.from(), hours.to()))));
        material.bees().filter(hazard -> hazard != BeeHazard.LOW)
                .ifPresent(hazard -> facts.add(reader.phrases().word("bees", hazard)));
        facts.add(reader.phrases().word("organic", material.organic()));
        facts.removeIf(String::isEmpty);
        return facts.isEmpty() ? "" : " (" + String.join("; ", facts) + ")";
    }

    private List<Run> caution() {
        Line line = Line.of().strong(reader.say("caution.tier3"));
        for (Text caution : entry.cautions()) {
            line.sentence(reader.read(caution));
        }
        return line.runs();
    }

    private Span at(Control control) {
        return placed.at("controls", entry.controls().indexOf(control));
    }
}
