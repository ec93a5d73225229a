package org.fieldfold.typeset;

/**
 * What is weighed when a guide is filled, in one currency. The cost of a guide at one type size is the sum
 * over its panels and blocks of:
 *
 * <ul>
 *   <li>{@link #OVER} for each half line that does not fit;
 *   <li>{@link #ON_A_BACK} for each entry that begins on the back of a sheet, where sheets are taken along
 *       alone;
 *   <li>{@link #DROPPED} for each item left out and {@link #BRIEF} for each block in its short form;
 *   <li>{@link #SPARED} for a table left out that is not needed, {@link #THINNED} for one with fewer rows;
 *   <li>{@link #SHARED} for each section that begins on a panel with another;
 *   <li>{@link #DIVIDED} for each panel on which a section goes on; {@link #APART} more if what goes on is
 *       not the first tier of control, before which it divides by itself, and {@link #INSIDE} more in the
 *       middle of a block;
 *   <li>{@link #PLATE} for each half line that drawings are lower than they could be;
 *   <li>the square of the half lines left empty on each panel used, which balances panels.
 * </ul>
 *
 * <p>Sizes come before all of it: the largest size at which nothing is over is taken.
 */
final class Cost {
    static final long OVER = 100_000_000;
    static final long ON_A_BACK = 200_000;
    static final long DROPPED = 150_000;
    static final long BRIEF = 100_000;
    static final long SPARED = 45_000;
    static final long THINNED = 30_000;
    static final long SHARED = 50_000;
    static final long DIVIDED = 20_000;
    static final long APART = 600;
    static final long INSIDE = 400;
    static final long PLATE = 100;

    private Cost() {}

    static long empty(int halfLines) {
        return (long) halfLines * halfLines;
    }
}
