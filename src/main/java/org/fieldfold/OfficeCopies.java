package org.fieldfold;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.Units;

/** What the county offices print: each its guides, in its languages, on its paper, for its printer. */
final class OfficeCopies {
    private OfficeCopies() {
    }

    /**
     * Whether an office hands out a guide in a language, in units, on a paper; what it cannot have is found by a rule.
     *
     * @param edition whose units are those of offices that choose none
     */
    static boolean has(Office office, Guide guide, String language, Optional<Units> units, String paper,
            Edition edition) {
        return office.handsOut(guide) && office.languages().contains(language) && office.paper().equals(paper)
                && office.units().or(edition::units).equals(units);
    }

    /** The units in which some copy is printed, the edition's own first. */
    static Set<Optional<Units>> units(ContentBase base) {
        Set<Optional<Units>> units = new LinkedHashSet<>(Set.of(base.edition().value().units()));
        base.offices().values().forEach(office -> office.value().units().ifPresent(own ->
                units.add(Optional.of(own))));
        return units;
    }

    /** Whether a run is printed at all: for everybody, or for some office. */
    static boolean isPrinted(ContentBase base, PrintRun run) {
        return run.isForAll() || base.offices().values().stream().anyMatch(office -> run.isFor(office.value()));
    }
}
