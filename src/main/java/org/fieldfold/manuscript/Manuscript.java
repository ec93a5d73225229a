package org.fieldfold.manuscript;

import java.util.List;
import java.util.Optional;
import org.fieldfold.prose.Run;

/**
 * One thing to be read, from its first section to its last.
 *
 * @param id file name without language, paper and ending
 * @param language as in {@code en}
 * @param year of the edition, printed on every panel
 * @param holdsUntil in words, as in {@code 31 January 2028}
 * @param proof a mark on every panel while findings stand, as in {@code PROOF}; empty on a clean copy
 * @param foot the caution at the foot of every panel
 * @param ink of titles, {@code #rrggbb}
 */
public record Manuscript(String id, String title, String language, int year, String holdsUntil,
        Optional<String> proof, List<Run> foot, String ink, TypeRange type, List<Section> sections) {
    public Manuscript {
        foot = List.copyOf(foot);
        sections = List.copyOf(sections);
    }

    /** The same in other sizes of type. */
    public Manuscript in(TypeRange other) {
        return new Manuscript(id, title, language, year, holdsUntil, proof, foot, ink, other, sections);
    }

    /** The same with other sections. */
    public Manuscript of(List<Section> others) {
        return new Manuscript(id, title, language, year, holdsUntil, proof, foot, ink, type, others);
    }

    /** Sizes of body type, in points, between which it may be set; the largest that fits is taken. */
    public record TypeRange(double smallest, double largest) {
        public TypeRange {
            if (!(smallest > 0) || smallest > largest) {
                throw new IllegalArgumentException("type from " + smallest + " to " + largest + " pt");
            }
        }
    }
}
