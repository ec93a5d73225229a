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
 * Writes what can be done, tier 1 before 2 before 3. This is the only place where measures become words, so
 * their order holds everywhere, and tier 3 never stands without its caution.
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
            List<Control> controls = reader.controls(entry, tier);
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
            measures.add(reader.pocket()
                    ? new Block.Measure(words(control, condition.isPresent()), at(control)) : told(control));
        }
        Line words = Line.of().strong(heading).plain(reader.pocket() ? "" : reader.say("tier.why." + tier));
        return new Block.Tier(tier, words.runs(), measures,
                tier == 3 ? caution() : List.of(), at(controls.get(0)));
    }

    /** The condition that all materials share: it is said once, in the heading. */
    private Optional<String> condition(List<Control> controls) {
        if (!reader.pocket()) {
            return Optional.empty();
        }
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

    /** A measure as the handbook tells it: for whom it is meant, and a material's facts one by one. */
    private Block.Measure told(Control control) {
        String only = reader.only(control.audiences());
        Line line = Line.of().strong(only.isEmpty() ? "" : only + ": ");
        if (!(control instanceof Control.Insecticide use)) {
            return new Block.Measure(line.add(words(control, false)).runs(), at(control));
        }
        Optional<ActiveIngredient> known = Optional.ofNullable(base.materials().get(use.material()))
                .map(Placed::value);
        line.strong(known.map(ActiveIngredient::name).orElse(use.material())).plain(".");
        known.filter(ActiveIngredient::restrictedUse)
                .ifPresent(material -> line.plain(" ").strong(reader.say("book.restricted")));
        use.note().ifPresent(note -> line.sentence(reader.read(note)));
        List<Block.Fact> facts = new ArrayList<>();
        use.when().ifPresent(when ->
                facts.add(new Block.Fact(reader.say("book.material.when"), reader.read(when))));
        known.ifPresent(material -> facts.addAll(new MaterialFacts(reader.phrases()).of(material)));
        use.bees().ifPresent(bees -> facts.add(new Block.Fact(reader.say("book.material.bloom"),
                reader.read(bees))));
        return new Block.Measure(line.runs(), facts, at(control));
    }

    private List<Run> linked(Text measure, Optional<String> page) {
        List<Run> runs = reader.read(measure);
        if (reader.pocket() || page.isEmpty() || runs.isEmpty()) {
            return runs;
        }
        Line line = Line.of().add(runs);
        return line.plain(" " + reader.say("book.more") + " ").add(Run.plain(pageName(page.get()))
                .to("#" + page.get())).plain(".").runs();
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
        if (!reader.pocket()) {
            line.sentence(List.of(Run.plain(reader.say("book.all-cautions")).to(Places.to(Places.CAUTIONS))));
        }
        return line.runs();
    }

    private Span at(Control control) {
        return placed.at("controls", entry.controls().indexOf(control));
    }
}
