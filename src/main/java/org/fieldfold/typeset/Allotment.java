package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.List;

/**
 * Shares panels out among sections that are read one after another: how many panels each gets, and, where
 * there are more sections than panels, which of them stand together. Dynamic programming over sections and
 * panels.
 */
final class Allotment {
    /** The most panels that one section (or a group that stands together) may be spread over. */
    private static final int WIDEST = 4;

    /**
     * Sections that begin on one run of panels.
     *
     * @param from first section, from 0
     * @param to behind the last
     * @param panel first panel, from 0
     * @param panels how many it may use
     */
    record Group(int from, int to, int panel, int panels) {}

    /** What a group costs. */
    interface Price {
        long of(Group group);
    }

    private final int sections;
    private final int panels;
    private final Price price;
    private final long[][] cost;
    private final Group[][] taken;

    private Allotment(int sections, int panels, Price price) {
        this.sections = sections;
        this.panels = panels;
        this.price = price;
        this.cost = new long[sections + 1][panels + 1];
        this.taken = new Group[sections + 1][panels + 1];
    }

    /** The cheapest groups, in order; there must be a panel if there is a section. */
    static List<Group> best(int sections, int panels, Price price) {
        if (panels < 1 && sections > 0) {
            throw new IllegalArgumentException(sections + " sections and no panel");
        }
        return new Allotment(sections, panels, price).solve();
    }

    /**
     * The groups that may begin with section {@code from} on {@code panel}; none leaves a later one without.
     */
    static List<Group> open(int from, int panel, int sections, int panels) {
        List<Group> groups = new ArrayList<>();
        boolean crowded = sections > panels;
        for (int to = from + 1; to <= (crowded ? sections : from + 1); to++) {
            for (int count = 1; count <= Math.min(WIDEST, panels - panel); count++) {
                int after = panels - panel - count;
                boolean rest = to == sections || (crowded ? after > 0 : after >= sections - to);
                if (rest && count <= Math.max(to - from, crowded ? 1 : WIDEST)) {
                    groups.add(new Group(from, to, panel, count));
                }
            }
        }
        return groups;
    }

    private List<Group> solve() {
        for (int from = sections - 1; from >= 0; from--) {
            for (int panel = 0; panel < panels; panel++) {
                cost[from][panel] = Long.MAX_VALUE;
                for (Group group : open(from, panel, sections, panels)) {
                    long rest = cost[group.to][panel + group.panels];
                    if (rest != Long.MAX_VALUE && price.of(group) + rest < cost[from][panel]) {
                        cost[from][panel] = price.of(group) + rest;
                        taken[from][panel] = group;
                    }
                }
            }
            cost[from][panels] = Long.MAX_VALUE;
        }
        List<Group> groups = new ArrayList<>();
        for (int from = 0, panel = 0; from < sections;) {
            Group group = taken[from][panel];
            groups.add(group);
            from = group.to;
            panel += group.panels;
        }
        return groups;
    }
}
