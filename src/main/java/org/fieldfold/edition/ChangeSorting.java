package org.fieldfold.edition;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Decides what a difference is about. */
final class ChangeSorting {
    private static final Pattern FIGURE = Pattern.compile("\\d+(?:[.,]\\d+)?");

    /** Records that are entries: one that comes or goes is news by itself. */
    private static final List<String> ENTRIES = List.of("pests", "enemies", "practices");

    private static final Map<String, ChangeGroup> BY_KEY = Map.ofEntries(
            Map.entry("thresholds", ChangeGroup.THRESHOLDS), Map.entry("monitoring", ChangeGroup.MONITORING),
            Map.entry("cautions", ChangeGroup.CAUTIONS), Map.entry("names", ChangeGroup.IDENTIFICATION),
            Map.entry("crops", ChangeGroup.IDENTIFICATION), Map.entry("figures", ChangeGroup.IDENTIFICATION),
            Map.entry("stages", ChangeGroup.IDENTIFICATION), Map.entry("damage", ChangeGroup.IDENTIFICATION),
            Map.entry("look-alikes", ChangeGroup.IDENTIFICATION),
            Map.entry("year", ChangeGroup.IDENTIFICATION),
            Map.entry("overwinters", ChangeGroup.IDENTIFICATION), Map.entry("spare", ChangeGroup.MEASURES),
            Map.entry("keeps-down", ChangeGroup.MEASURES), Map.entry("helps", ChangeGroup.MEASURES),
            Map.entry("conserve", ChangeGroup.MEASURES), Map.entry("release", ChangeGroup.MEASURES));

    /** Texts whose words are the advice itself; in all others words may change while the advice stands. */
    private static final List<String> SUBSTANCE = List.of("measure", "comes-off", "when", "bees", "bee-note",
            "reason", "note", "act", "steps", "watch", "irrigation", "ventilation", "weeds", "conserve",
            "release");

    private ChangeSorting() {
    }

    /** The group of a record that came or went. */
    static ChangeGroup ofRecord(String kind) {
        return ENTRIES.contains(kind) ? ChangeGroup.ENTRIES
                : kind.equals("materials") ? ChangeGroup.MATERIALS
                : kind.equals("figures") ? ChangeGroup.IDENTIFICATION : ChangeGroup.OTHER;
    }

    static ChangeGroup of(String kind, Difference difference) {
        ChangeGroup substance = substance(kind, difference);
        boolean words = difference.isOrder() || kind.equals("chapters")
                || kind.equals("figures") && List.of("caption", "alt", "credit").contains(difference.key())
                || substance != ChangeGroup.CAUTIONS && isWording(difference);
        return words ? ChangeGroup.WORDING : substance;
    }

    private static ChangeGroup substance(String kind, Difference difference) {
        return switch (kind) {
            case "materials" -> ChangeGroup.MATERIALS;
            case "practices" -> difference.key().equals("sources") ? ChangeGroup.OTHER : ChangeGroup.MEASURES;
            case "figures" -> List.of("licence", "release").contains(difference.key())
                    ? ChangeGroup.OTHER : ChangeGroup.IDENTIFICATION;
            case "edition" -> difference.key().equals("cautions") ? ChangeGroup.CAUTIONS : ChangeGroup.OTHER;
            case "pests", "enemies" -> difference.key().equals("controls")
                    ? difference.item().facts().word("tier").equals(Optional.of("3"))
                            ? ChangeGroup.MATERIALS : ChangeGroup.MEASURES
                    : BY_KEY.getOrDefault(difference.key(), ChangeGroup.OTHER);
            default -> ChangeGroup.OTHER;
        };
    }

    /**
     * Whether only words changed: a longer form or one for gardens, or the short form of a text that
     * describes; and no figure in it is another.
     */
    private static boolean isWording(Difference difference) {
        boolean longer = List.of("handbook", "garden").contains(difference.last());
        boolean describing = difference.last().equals("pocket") && !SUBSTANCE.contains(field(difference));
        return (longer || describing) && figures(difference.before()).equals(figures(difference.after()));
    }

    /** The key of the text of which a length changed. */
    private static String field(Difference difference) {
        return difference.below().size() < 2 ? difference.key()
                : difference.below().get(difference.below().size() - 2);
    }

    private static List<String> figures(Optional<Fact> fact) {
        return FIGURE.matcher(fact.filter(Fact.Word.class::isInstance).map(word -> ((Fact.Word) word).text())
                .orElse("")).results().map(MatchResult::group).sorted().toList();
    }
}
