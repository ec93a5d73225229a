package org.fieldfold.typeset;

import java.util.List;

/**
 * What is asked while the right size and the best plan are looked for, with all that the answer depends on but
 * for the type itself. Only names of sections stand in it, see {@link Trials#name}.
 */
public sealed interface Trial {
    /** The type that is tried. */
    record Type(Leading leading, Mark.Ink ink, String language) {}

    /** A section in a column. */
    record Column(String section, Outline outline, double measure) {}

    /** How many half lines a section takes at least. */
    record Least(Type type, Column section) implements Trial {}

    /**
     * What it costs to fill panels with sections that stand together.
     *
     * @param capacities half lines of each panel
     */
    record Price(Type type, List<Column> sections, List<Integer> capacities) implements Trial {}
}
