package org.fieldfold.fold;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Whether paper can lie in a given order of layers: each fold closes the way it is bent, no fold closes
 * through a layer that lies across it, and no two folds on the same edge interlock. These are the taco-taco
 * and taco-tortilla conditions of flat folding (common knowledge of the field; Bern and Hayes 1996, value
 * from memory).
 */
final class LayerOrder {
    private LayerOrder() {
    }

    /** The reason why the layers, lowest first, cannot lie so; empty if they can. */
    static Optional<String> flaw(List<PlacedPanel> layers, List<Crease> creases) {
        Map<Cell, Integer> level = new HashMap<>();
        Map<Cell, PlacedPanel> panels = new HashMap<>();
        for (PlacedPanel panel : layers) {
            level.put(panel.cell(), level.size());
            panels.put(panel.cell(), panel);
        }
        List<Bight> bights = new ArrayList<>();
        for (Crease crease : creases) {
            PlacedPanel low = panels.get(crease.joint().low());
            PlacedPanel high = panels.get(crease.joint().high());
            if (low == null || high == null) {
                continue;
            }
            int a = level.get(low.cell());
            int b = level.get(high.cell());
            if (closesUpwards(low, crease) != b > a) {
                return Optional.of("line " + crease.joint().line() + " would be bent the wrong way between "
                        + low.cell() + " and " + high.cell());
            }
            bights.add(new Bight(crease.joint(), low, low.edgeTowards(crease.joint()),
                    Math.min(a, b), Math.max(a, b)));
        }
        for (Bight bight : bights) {
            Optional<String> flaw = pierced(bight, layers).or(() -> interlocked(bight, bights));
            if (flaw.isPresent()) {
                return flaw;
            }
        }
        return Optional.empty();
    }

    /** The fold of two layers, as a bight that holds all layers between them. */
    record Bight(Joint joint, PlacedPanel panel, double at, int low, int high) {
        Axis axis() {
            return joint.line().axis();
        }

        boolean opensToHigh() {
            return panel.low(axis()) == at;
        }
    }

    static List<Bight> bights(List<PlacedPanel> layers, List<Crease> creases) {
        Pile pile = new Pile(layers);
        return creases.stream().map(crease -> {
            PlacedPanel panel = pile.at(crease.joint().low());
            int a = pile.levelOf(crease.joint().low());
            int b = pile.levelOf(crease.joint().high());
            return new Bight(crease.joint(), panel, panel.edgeTowards(crease.joint()),
                    Math.min(a, b), Math.max(a, b));
        }).toList();
    }

    /** A valley closes over the face that was up: upwards while that face is up, downwards when turned. */
    private static boolean closesUpwards(PlacedPanel panel, Crease crease) {
        return crease.valley() == panel.faceUp();
    }

    private static Optional<String> pierced(Bight bight, List<PlacedPanel> layers) {
        for (int k = bight.low() + 1; k < bight.high(); k++) {
            PlacedPanel between = layers.get(k);
            if (between.low(bight.axis()) < bight.at() && bight.at() < between.high(bight.axis())
                    && between.abreast(bight.panel(), bight.axis())) {
                return Optional.of(between.cell() + " sticks out through the fold at line "
                        + bight.joint().line() + " around it: what is folded in must be"
                        + " narrower than what it is folded into");
            }
        }
        return Optional.empty();
    }

    private static Optional<String> interlocked(Bight bight, List<Bight> all) {
        for (Bight other : all) {
            if (other.axis() == bight.axis() && other.at() == bight.at()
                    && other.opensToHigh() == bight.opensToHigh()
                    && other.panel().abreast(bight.panel(), bight.axis())
                    && bight.low() < other.low() && other.low() < bight.high()
                    && bight.high() < other.high()) {
                return Optional.of("the folds at " + bight.joint().line() + " and " + other.joint().line()
                        + " interlock: the paper would have to pass through itself");
            }
        }
        return Optional.empty();
    }
}
