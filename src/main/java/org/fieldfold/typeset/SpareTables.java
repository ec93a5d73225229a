package org.fieldfold.typeset;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;
import java.util.function.Predicate;
import org.fieldfold.manuscript.Block;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.Section;

/**
 * Which sections keep their spare tables. A table that helps in the row is worth more than a quarter point of
 * type, so that it stays wherever the smallest type has room for it; a section that is over gives its own up.
 */
final class SpareTables {
    private final Manuscript free;
    /** By the section that may do without. */
    private final Map<Section, Section> needing = new IdentityHashMap<>();
    /** By the section that needs its tables. */
    private final Map<Section, Section> freed = new IdentityHashMap<>();

    /** @param free whose spare tables may all be left out */
    SpareTables(Manuscript free) {
        this.free = free;
    }

    /**
     * The manuscript with the tables that have room made needed ones; the rest may still be left out.
     *
     * @param over id of a section that does not fit at the smallest size, or empty when all do
     */
    Manuscript kept(Function<Manuscript, Optional<String>> over) {
        Manuscript kept = with(section -> true);
        while (!kept.equals(free)) {
            Optional<String> full = over.apply(kept);
            if (full.isEmpty()) {
                return kept;
            }
            kept = released(kept, full.get());
        }
        return free;
    }

    /** Trials that know a section which needs its tables by the name of the one that may do without. */
    Trials naming(Trials trials) {
        return new Trials() {
            @Override
            public Optional<String> name(Section section) {
                Section may = freed.get(section);
                return may == null ? trials.name(section) : trials.name(may).map(name -> name + " with its tables");
            }

            @Override
            public OptionalLong answer(Trial trial) {
                return trials.answer(trial);
            }

            @Override
            public void learn(Trial trial, long answer) {
                trials.learn(trial, answer);
            }
        };
    }

    /** One section less: the full one, or the first that still keeps something. */
    private Manuscript released(Manuscript kept, String full) {
        List<String> keeping = kept.sections().stream().filter(freed::containsKey).map(Section::id).toList();
        String next = keeping.contains(full) ? full : keeping.get(0);
        return with(section -> keeping.contains(section.id()) && !section.id().equals(next));
    }

    private Manuscript with(Predicate<Section> keeps) {
        return free.of(free.sections().stream().map(section -> keeps.test(section) ? needing(section) : section)
                .toList());
    }

    /** The very same section where it has no spare tables. */
    private Section needing(Section section) {
        if (section.blocks().stream().noneMatch(SpareTables::isSpare)) {
            return section;
        }
        return needing.computeIfAbsent(section, may -> {
            Section needs = new Section(may.id(), may.kind(), may.tab(), may.name(), may.blocks().stream()
                    .map(SpareTables::needed).toList(), may.origin());
            freed.put(needs, may);
            return needs;
        });
    }

    private static boolean isSpare(Block block) {
        return block instanceof Block.Weeks weeks && weeks.spare() || block instanceof Block.Grid grid && grid.spare();
    }

    private static Block needed(Block block) {
        if (block instanceof Block.Weeks weeks) {
            return new Block.Weeks(weeks.title(), weeks.months(), weeks.firstMonth(), weeks.rows(),
                    weeks.note(), false, weeks.origin());
        }
        return block instanceof Block.Grid grid && grid.spare() ? needed(grid) : block;
    }

    private static Block needed(Block.Grid grid) {
        return new Block.Grid(grid.caption(), grid.header(), grid.rows(), grid.brief(), false, grid.origin());
    }
}
