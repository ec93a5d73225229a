package org.fieldfold.edition;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts the differences of one record into words: what belongs to one thing becomes one change. */
final class ChangeWriting {
    private final FactWords was;
    private final FactWords is;
    private final String kind;
    private final String id;
    private final String name;

    ChangeWriting(Snapshot before, Snapshot after, String kind, String id) {
        this.was = new FactWords(before);
        this.is = new FactWords(after);
        this.kind = kind;
        this.id = id;
        Snapshot known = after.get(kind, id).isPresent() ? after : before;
        this.name = kind.equals("edition") ? "the edition" : known.name(kind, id);
    }

    /** A record that came or went. */
    Change whole(boolean added) {
        Change.Part part = new Change.Part("", added ? Optional.empty() : Optional.of(""),
                added ? Optional.of("") : Optional.empty(), "");
        return change(ChangeSorting.ofRecord(kind), kind.equals("pests") ? "" : FactWords.key(singular()), "",
                List.of(part));
    }

    private String singular() {
        return switch (kind) {
            case "enemies" -> "natural-enemy";
            default -> kind.endsWith("s") ? kind.substring(0, kind.length() - 1) : kind;
        };
    }

    /** Everything that differs in a record that stayed. */
    List<Change> between(Fact.Group before, Fact.Group after) {
        if (kind.equals("translations")) {
            return translations(Difference.between(before, after));
        }
        Map<List<Object>, List<Difference>> byThing = new LinkedHashMap<>();
        for (Difference difference : Difference.between(before, after)) {
            ChangeGroup group = ChangeSorting.of(kind, difference);
            boolean itself = difference.item().isNone()
                    || difference.item().facts().facts().isEmpty();
            Object thing = itself ? difference.key() + "\n" + difference.below() : difference.item();
            byThing.computeIfAbsent(List.of(group, difference.key(), thing), none -> new ArrayList<>())
                    .add(difference);
        }
        List<Change> changes = new ArrayList<>();
        byThing.forEach((thing, differences) -> changes.add(change((ChangeGroup) thing.get(0), differences,
                before, after)));
        return changes;
    }

    /** A language changes a great deal with every edition: it is told file by file. */
    private List<Change> translations(List<Difference> differences) {
        Map<String, List<Difference>> byFile = new LinkedHashMap<>();
        differences.forEach(difference -> byFile.computeIfAbsent(difference.key().equals("files")
                && !difference.below().isEmpty() ? difference.below().get(0) : difference.key(),
                none -> new ArrayList<>()).add(difference));
        List<Change> changes = new ArrayList<>();
        byFile.forEach((file, of) -> {
            long texts = of.stream().map(difference -> difference.below().stream().limit(3).toList())
                    .distinct().count();
            changes.add(new Change(ChangeGroup.WORDING, kind, id, "translation " + id, file, "", "",
                    List.of(new Change.Part(texts == 1 ? "1 text changed" : texts + " texts changed",
                            Optional.empty(), Optional.empty(), ""))));
        });
        return changes;
    }

    private Change change(ChangeGroup group, List<Difference> differences, Fact.Group before,
            Fact.Group after) {
        Difference first = differences.get(0);
        if (first.item().isNone() || first.item().facts().facts().isEmpty()) {
            return change(group, "", "", differences.stream().map(this::plainPart).toList());
        }
        Fact.Group item = first.item().facts();
        List<Change.Part> parts = new ArrayList<>();
        if (first.key().equals("thresholds")) {
            parts.addAll(counts(differences, before, after));
        }
        for (Difference difference : differences) {
            boolean counted = first.key().equals("thresholds") && (difference.below().isEmpty()
                    || ThresholdWords.KEYS.contains(difference.last()) && difference.below().size() == 1);
            if (!counted || parts.isEmpty()) {
                parts.add(difference.below().isEmpty() ? wholeItem(difference)
                        : part(FactWords.path(difference.below()), difference));
            }
        }
        return change(group, thing(first.key(), item), about(first.key(), item),
                item.word("material").or(() -> item.word("id")).orElse(""), parts);
    }

    private Change change(ChangeGroup group, String thing, String about, List<Change.Part> parts) {
        return change(group, thing, about, "", parts);
    }

    private Change change(ChangeGroup group, String thing, String about, String item,
            List<Change.Part> parts) {
        return new Change(group, kind, id, name, thing, about, item, parts);
    }

    private Change.Part plainPart(Difference difference) {
        if (difference.key().equals("withdrawn") && difference.after().isPresent()) {
            return new Change.Part("withdrawn from " + is.value("withdrawn", difference.after().get()),
                    Optional.empty(), Optional.empty(), "");
        }
        List<String> path = new ArrayList<>(List.of(difference.key()));
        path.addAll(difference.below());
        return part(FactWords.path(path), difference);
    }

    private Change.Part part(String what, Difference difference) {
        if (difference.isOrder()) {
            return new Change.Part(what.replaceFirst(", " + Difference.ORDER + "$", "") + " in another order",
                    Optional.empty(), Optional.empty(), "");
        }
        if (difference.last().equals("image")) {
            return new Change.Part("drawn anew", Optional.empty(), Optional.empty(), "");
        }
        String key = difference.last();
        return new Change.Part(what, difference.before().map(fact -> was.value(key, fact)),
                difference.after().map(fact -> is.value(key, fact)), FactWords.unit(key));
    }

    /** The count itself, said once whichever of its keys changed; empty when it reads as before. */
    private List<Change.Part> counts(List<Difference> differences, Fact.Group before, Fact.Group after) {
        if (differences.stream().noneMatch(difference -> difference.below().isEmpty()
                || ThresholdWords.KEYS.contains(difference.last()))) {
            return List.of();
        }
        Difference.Item item = differences.get(0).item();
        Optional<ThresholdWords.Measure> old = item.before().map(fact ->
                new ThresholdWords(before).measure((Fact.Group) fact));
        Optional<ThresholdWords.Measure> now = item.after().map(fact ->
                new ThresholdWords(after).measure((Fact.Group) fact));
        if (old.equals(now)) {
            return List.of();
        }
        boolean sameUnit = old.isPresent() && now.isPresent() && old.get().unit().equals(now.get().unit())
                && !old.get().number().isEmpty() && !now.get().number().isEmpty();
        return List.of(sameUnit
                ? new Change.Part("", old.map(ThresholdWords.Measure::number),
                        now.map(ThresholdWords.Measure::number), now.get().unit())
                : new Change.Part("", old.map(ThresholdWords.Measure::whole),
                        now.map(ThresholdWords.Measure::whole), ""));
    }

    private Change.Part wholeItem(Difference difference) {
        boolean material = difference.item().facts().word("material").isPresent();
        return new Change.Part("", difference.before().map(fact -> material ? ""
                : brief(was, difference.key(), fact)),
                difference.after().map(fact -> brief(is, difference.key(), fact)), "");
    }

    private static String brief(FactWords words, String key, Fact fact) {
        if (!(fact instanceof Fact.Group item)) {
            return words.value(key, fact);
        }
        return switch (key) {
            case "controls" -> item.word("tier").equals(Optional.of("3"))
                    ? FactWords.pocket(item, "when").orElse("")
                    : FactWords.pocket(item, "measure").orElse("");
            default -> words.value(key, item.without("id"));
        };
    }

    private String thing(String key, Fact.Group item) {
        return switch (key) {
            case "thresholds" -> "action threshold";
            case "controls" -> item.word("material").map(material -> is.name("material", material))
                    .orElse("tier " + item.word("tier").orElse("") + " measure");
            case "stages" -> item.word("stage").orElse("stage");
            case "look-alikes" -> "look-alike " + item.word("entry").map(entry -> is.name("entry", entry))
                    .orElse("");
            case "cautions" -> "caution";
            default -> FactWords.key(key);
        };
    }

    private String about(String key, Fact.Group item) {
        return switch (key) {
            case "thresholds" -> is.about(item);
            case "controls" -> item.word("material").isPresent() ? ""
                    : item.word("practice").map(practice -> is.name("practice", practice))
                            .orElse(FactWords.pocket(item, "measure").map(FactWords::quoted).orElse(""));
            case "monitoring" -> item.word("unit").map(unit -> unit.replace('-', ' ')).orElse("")
                    + item.get("audiences").map(fact -> ", " + is.value("audiences", fact)).orElse("");
            case "damage" -> item.word("part").orElse("") + " " + item.word("sign").orElse("");
            default -> "";
        };
    }
}
