package org.fieldfold.content;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.fieldfold.entry.BodyWidth;
import org.fieldfold.entry.BorderSize;
import org.fieldfold.entry.Clumping;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.DegreeDayEvent;
import org.fieldfold.entry.EarlyStop;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.Monitoring;
import org.fieldfold.entry.NaturalEnemy;
import org.fieldfold.entry.PerArea;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Practice;
import org.fieldfold.entry.Reviewer;
import org.fieldfold.entry.SeasonRotation;
import org.fieldfold.entry.Threshold;
import org.fieldfold.entry.TunnelSizes;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Span;

/** Every id that a record names belongs to something in the content base. */
final class References {
    /**
     * What an id is expected to belong to.
     *
     * @param open whether some of the ids are not known, because their file could not be read
     */
    record Target(String name, Set<String> ids, boolean open) {
        /** What is to be said where nothing has an id that is named. */
        Optional<Finding> missing(Span place, String id) {
            return open || ids.contains(id) ? Optional.empty() : Optional.of(FormRule.UNKNOWN_REFERENCE.at(place,
                    "expected the id of " + name + ", found '" + ScalarReading.cut(id) + "'",
                    Nearest.hint(id, ids, "add " + name + " with this id, or take the reference out")));
        }
    }

    private static final int MOST_FINDINGS = 2_000;
    private static final String LINKED = "an entry or chapter";
    private static final FileKind[] LINKABLE = {FileKind.PEST, FileKind.NATURAL_ENEMY, FileKind.PRACTICE,
        FileKind.CHAPTER};

    private final List<Finding> findings = new ArrayList<>();
    private final Assembly assembly;
    private final Target crop;
    private final Target pest;
    private final Target animal;
    private final Target enemy;
    private final Target practice;
    private final Target material;
    private final Target source;
    private final Target price;
    private final Target figure;
    private final Target guide;
    private final Target shown;
    private final Target reviewer;

    References(ContentBase base, Assembly assembly) {
        this.assembly = assembly;
        handbook(base.edition());
        this.crop = target("a crop", FileKind.CROPS);
        this.pest = target("a pest", FileKind.PEST);
        this.enemy = target("a natural enemy", FileKind.NATURAL_ENEMY);
        this.animal = target("a pest or natural enemy", FileKind.PEST, FileKind.NATURAL_ENEMY);
        this.practice = target("a practice", FileKind.PRACTICE);
        this.material = target("an active ingredient", FileKind.ACTIVE_INGREDIENTS);
        this.source = target("a source", FileKind.SOURCES);
        this.price = target("a price", FileKind.PRICES);
        this.figure = target("a figure", FileKind.FIGURE);
        this.guide = target("a guide", FileKind.GUIDE);
        this.shown = target("a pest, natural enemy or practice", FileKind.PEST, FileKind.NATURAL_ENEMY,
                FileKind.PRACTICE);
        this.reviewer = new Target("a reviewer", new TreeSet<>(
                base.edition().value().reviewers().stream().map(Reviewer::id).toList()), false);
        base.pests().values().forEach(this::pest);
        base.enemies().values().forEach(this::enemy);
        base.practices().values().forEach(this::practice);
        base.materials().values().forEach(known -> {
            all(known, source, known.value().sources(), "sources");
            all(known, crop, known.value().lostUses(), "lost-uses");
        });
        base.prices().values().forEach(known -> maybe(known, source, known.value().source(), "source"));
        base.guides().values().forEach(known -> {
            all(known, crop, known.value().crops(), "crops");
            all(known, pest, known.value().entries(), "entries");
        });
        Target station = target("a weather station", FileKind.WEATHER);
        Target entry = target("an entry", FileKind.PEST, FileKind.NATURAL_ENEMY, FileKind.PRACTICE);
        base.offices().values().forEach(known -> {
            one(known, station, known.value().station(), "station");
            all(known, guide, known.value().guides(), "guides");
            all(known, pest, known.value().leaveOut(), "leave-out");
            for (int i = 0; i < known.value().notes().size(); i++) {
                one(known, pest, known.value().notes().get(i).entry(), "notes", i, "entry");
            }
            for (int i = 0; i < known.value().requests().size(); i++) {
                one(known, entry, known.value().requests().get(i).entry(), "requests", i, "entry");
            }
        });
        base.sources().values().forEach(known ->
                maybe(known, source, known.value().supersededBy(), "superseded-by"));
        base.figures().values().forEach(this::figure);
        Target linked = target(LINKED, LINKABLE);
        assembly.links().forEach(link -> check(link.place(), linked, link.entry()));
    }

    List<Finding> findings() {
        return findings;
    }

    /** What links in texts may lead to, told from the names of files alone. */
    static Target linked(List<ContentFile> files) {
        return new Target(LINKED, new TreeSet<>(files.stream().filter(file -> List.of(LINKABLE).contains(file.kind()))
                .map(ContentFile::id).toList()), false);
    }

    /** It is printed as a link, and as a square code that telephones open. */
    private void handbook(Placed<Edition> edition) {
        String address = edition.value().handbook();
        if (!LinkForm.isPage(address)) {
            findings.add(FormRule.LINK_SCHEME.at(edition.at("handbook"), "expected the address of a page with "
                    + "https: or http:, found '" + ScalarReading.cut(address) + "'",
                    "write it whole, as in https://handbook.example/2027"));
        }
    }

    private Target target(String name, FileKind... kinds) {
        Set<String> ids = new TreeSet<>();
        for (FileKind kind : kinds) {
            ids.addAll(assembly.ids(kind));
        }
        return new Target(name, ids, Arrays.stream(kinds).anyMatch(assembly::isUnknown));
    }

    private void pest(Placed<PestEntry> known) {
        PestEntry entry = known.value();
        all(known, crop, entry.crops(), "crops");
        all(known, figure, entry.figures(), "figures");
        for (int i = 0; i < entry.lookAlikes().size(); i++) {
            one(known, animal, entry.lookAlikes().get(i).entry(), "look-alikes", i, "entry");
        }
        Target counts = new Target("a monitoring of this entry",
                new TreeSet<>(entry.monitoring().stream().map(Monitoring::id).toList()), false);
        for (int i = 0; i < entry.monitoring().size(); i++) {
            monitoring(known, entry.monitoring().get(i), i);
        }
        for (int i = 0; i < entry.thresholds().size(); i++) {
            Threshold threshold = entry.thresholds().get(i);
            maybe(known, crop, threshold.crop(), "thresholds", i, "crop");
            maybe(known, counts, threshold.monitoring(), "thresholds", i, "monitoring");
            all(known, pest, threshold.together(), "thresholds", i, "together");
            maybe(known, source, threshold.source(), "thresholds", i, "source");
            counting(known, threshold, i);
        }
        for (int i = 0; i < entry.stages().size(); i++) {
            maybe(known, source, entry.stages().get(i).bodyWidth().flatMap(BodyWidth::source), "stages", i,
                    "body-width", "source");
        }
        entry.rotation().ifPresent(rotation -> rotation(known, rotation));
        for (int i = 0; i < entry.controls().size(); i++) {
            control(known, entry.controls().get(i), i);
        }
        all(known, enemy, entry.spare(), "spare");
        all(known, source, entry.sources(), "sources");
        maybe(known, reviewer, entry.reviser(), "reviser");
    }

    private void counting(Placed<?> known, Threshold threshold, int i) {
        maybe(known, source, threshold.stopEarly().flatMap(EarlyStop::source), "thresholds", i, "stop-early",
                "source");
        threshold.injuryLevel().ifPresent(terms -> {
            one(known, price, terms.cost(), "thresholds", i, "injury-level", "cost");
            one(known, price, terms.value(), "thresholds", i, "injury-level", "value");
            maybe(known, source, terms.source(), "thresholds", i, "injury-level", "source");
        });
    }

    private void rotation(Placed<?> known, SeasonRotation rotation) {
        maybe(known, source, rotation.source(), "rotation", "source");
        for (int i = 0; i < rotation.broods().size(); i++) {
            all(known, material, rotation.broods().get(i).materials(), "rotation", "broods", i, "materials");
        }
    }

    private void monitoring(Placed<?> known, Monitoring monitoring, int i) {
        maybe(known, source, monitoring.dispersion().flatMap(Clumping::source), "monitoring", i, "dispersion",
                "source");
        maybe(known, source, monitoring.perArea().flatMap(PerArea::source), "monitoring", i, "per-area",
                "source");
        List<DegreeDayEvent> events = monitoring.season().map(season -> season.events()).orElse(List.of());
        for (int j = 0; j < events.size(); j++) {
            maybe(known, source, events.get(j).source(), "monitoring", i, "season", "events", j, "source");
        }
    }

    private void control(Placed<?> known, Control control, int i) {
        if (control instanceof Control.Cultural cultural) {
            maybe(known, practice, cultural.practice(), "controls", i, "practice");
        } else if (control instanceof Control.Exclusion exclusion) {
            maybe(known, practice, exclusion.practice(), "controls", i, "practice");
            maybe(known, enemy, exclusion.enemy(), "controls", i, "enemy");
        } else if (control instanceof Control.Insecticide insecticide) {
            one(known, material, insecticide.material(), "controls", i, "material");
        }
    }

    private void enemy(Placed<NaturalEnemy> known) {
        NaturalEnemy entry = known.value();
        all(known, figure, entry.figures(), "figures");
        for (int i = 0; i < entry.lookAlikes().size(); i++) {
            one(known, animal, entry.lookAlikes().get(i).entry(), "look-alikes", i, "entry");
        }
        all(known, pest, entry.keepsDown(), "keeps-down");
        all(known, source, entry.sources(), "sources");
        maybe(known, reviewer, entry.reviser(), "reviser");
    }

    private void practice(Placed<Practice> known) {
        Practice entry = known.value();
        for (int i = 0; i < entry.nets().size(); i++) {
            all(known, pest, entry.nets().get(i).stops(), "nets", i, "stops");
            maybe(known, source, entry.nets().get(i).source(), "nets", i, "source");
        }
        maybe(known, source, entry.tunnel().flatMap(TunnelSizes::source), "tunnel", "source");
        maybe(known, source, entry.border().flatMap(BorderSize::source), "border", "source");
        maybe(known, source, entry.perArea().flatMap(PerArea::source), "per-area", "source");
        all(known, source, entry.sources(), "sources");
        maybe(known, reviewer, entry.reviser(), "reviser");
    }

    private void figure(Placed<Figure> known) {
        one(known, shown, known.value().note().shows().entry(), "shows", "entry");
    }

    private void all(Placed<?> known, Target target, Collection<String> ids, Object... path) {
        int i = 0;
        for (String id : ids) {
            Object[] item = Arrays.copyOf(path, path.length + 1);
            item[path.length] = i++;
            one(known, target, id, item);
        }
    }

    private void maybe(Placed<?> known, Target target, Optional<String> id, Object... path) {
        id.ifPresent(given -> one(known, target, given, path));
    }

    private void one(Placed<?> known, Target target, String id, Object... path) {
        check(known.at(path), target, id);
    }

    private void check(Span place, Target target, String id) {
        if (findings.size() < MOST_FINDINGS) {
            target.missing(place, id).ifPresent(findings::add);
        }
    }
}
