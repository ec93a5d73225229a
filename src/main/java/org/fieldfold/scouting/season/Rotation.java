package org.fieldfold.scouting.season;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.fieldfold.scouting.Expect;

/**
 * Modes of action over the generations of a season. The offspring of what survived one mode must not meet the
 * same one: within a generation a group may be used again, in the next it may not.
 *
 * @param generations what was used against each, in order; an empty list for one that was left alone
 */
public record Rotation(List<List<ModeOfAction>> generations) {
    public Rotation {
        generations = generations.stream().map(List::copyOf).toList();
    }

    /** The rules of resistance management that a season can break. */
    public enum Rule {
        /** The same group in two generations running. */
        SAME_GROUP_IN_NEXT_GENERATION,
        /** More uses of a group in a season than its labels allow. */
        MORE_USES_THAN_ALLOWED
    }

    /**
     * One broken rule.
     *
     * @param generation the one at which it is broken, counted from 1
     * @param group number of the group, without subgroup
     */
    public record Violation(Rule rule, int generation, String group) {
    }

    /**
     * What the season breaks, by generation and group.
     *
     * @param mostUses of one group in a season, at least 1
     */
    public List<Violation> violations(int mostUses) {
        Expect.atLeast(1, mostUses, "most uses of a group in a season");
        List<Violation> violations = new ArrayList<>();
        List<String> used = new ArrayList<>();
        Set<String> before = Set.of();
        for (int i = 0; i < generations.size(); i++) {
            Set<String> now = groups(generations.get(i));
            for (String group : now) {
                long earlier = used.stream().filter(group::equals).count();
                long here = generations.get(i).stream().filter(mode -> mode.group().equals(group)).count();
                if (before.contains(group)) {
                    violations.add(new Violation(Rule.SAME_GROUP_IN_NEXT_GENERATION, i + 1, group));
                }
                if (earlier + here > mostUses) {
                    violations.add(new Violation(Rule.MORE_USES_THAN_ALLOWED, i + 1, group));
                }
            }
            generations.get(i).forEach(mode -> used.add(mode.group()));
            before = now;
        }
        return List.copyOf(violations);
    }

    private static Set<String> groups(Collection<ModeOfAction> modes) {
        return modes.stream().filter(mode -> !mode.isUnknown()).map(ModeOfAction::group)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /**
     * A season that breaks no rule of generations: one mode each, in the order given, again from the first
     * when they are used up.
     *
     * @param modes the ones that a crop's entry lists, best first
     * @return empty when there are too few groups for that many generations
     */
    public static Optional<Rotation> of(List<ModeOfAction> modes, int generations) {
        Expect.atLeast(1, generations, "generations in a season");
        List<ModeOfAction> distinct = new ArrayList<>();
        Set<String> seen = new TreeSet<>();
        for (ModeOfAction mode : modes) {
            if (seen.add(mode.group())) {
                distinct.add(mode);
            }
        }
        if (distinct.isEmpty() || distinct.size() == 1 && generations > 1 && !distinct.get(0).isUnknown()) {
            return Optional.empty();
        }
        List<List<ModeOfAction>> season = new ArrayList<>();
        for (int i = 0; i < generations; i++) {
            season.add(List.of(distinct.get(i % distinct.size())));
        }
        return Optional.of(new Rotation(season));
    }
}
