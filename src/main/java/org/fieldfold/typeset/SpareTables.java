package org.fieldfold.typeset;

import java.util.List;
import java.util.Optional;
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
    private SpareTables() {}

    /**
     * The manuscript with the tables that have room made needed ones; the rest may still be left out.
     *
     * @param over id of a section that does not fit at the smallest size, or empty when all do
     */
    static Manuscript kept(Manuscript manuscript, Function<Manuscript, Optional<String>> over) {
        Manuscript kept = with(manuscript, section -> true);
        while (!kept.equals(manuscript)) {
            Optional<String> full = over.apply(kept);
            if (full.isEmpty()) {
                return kept;
            }
            kept = released(kept, manuscript, full.get());
        }
        return manuscript;
    }

    /** One section less: the full one, or the first that still keeps something. */
    private static Manuscript released(Manuscript kept, Manuscript free, String full) {
        List<String> keeping = kept.sections().stream().filter(section -> !free.sections().contains(section))
                .map(Section::id).toList();
        String next = keeping.contains(full) ? full : keeping.get(0);
        return with(free, section -> keeping.contains(section.id()) && !section.id().equals(next));
    }

    private static Manuscript with(Manuscript manuscript, Predicate<Section> keeps) {
        return manuscript.of(manuscript.sections().stream()
                .map(section -> keeps.test(section) ? needing(section) : section).toList());
    }

    /** The very same section where it has no spare tables: it is named and compared at less cost. */
    private static Section needing(Section section) {
        return section.blocks().stream().noneMatch(SpareTables::isSpare) ? section : new Section(section.id(), section.kind(), section.tab(), section.name(), section.blocks()
                .stream().map(SpareTables::needed).toList(), section.origin());
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
