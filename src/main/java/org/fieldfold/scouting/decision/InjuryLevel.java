package org.fieldfold.scouting.decision;

import org.fieldfold.scouting.Expect;

/**
 * The economic injury level, {@code C / (V * I * D * K)}: pests at which the loss they cause equals what
 * control costs (Stern, Smith, van den Bosch and Hagen 1959, Hilgardia 29:81-101; in this form Pedigo,
 * Hutchins and Higley 1986, Annu. Rev. Entomol. 31:341-368, value from memory). Money and area units are the
 * caller's, the same in all.
 *
 * @param cost C, of one control on a unit of area, above 0
 * @param value V, of a unit of produce, above 0
 * @param injury I, units of injury that one pest causes, above 0
 * @param loss D, produce lost on that area for a unit of injury, above 0
 * @param kill K, share of the injury that the control prevents, above 0 and at most 1
 */
public record InjuryLevel(double cost, double value, double injury, double loss, double kill) {
    public InjuryLevel {
        Expect.above(0, cost, "cost of control (C)");
        Expect.above(0, value, "value of the produce (V)");
        Expect.above(0, injury, "injury per pest (I)");
        Expect.above(0, loss, "loss per injury (D)");
        Expect.above(0, kill, "share of injury prevented (K)");
        Expect.within(0, 1, kill, "share of injury prevented (K)");
    }

    /** Pests, in the unit that {@code injury} refers to. */
    public double pests() {
        return cost / (value * injury * loss * kill);
    }

    /**
     * The action threshold, set below the level so that there is time to act.
     *
     * @param share of the level, above 0 and at most 1; 0.75 to 0.8 is usual (value from memory)
     */
    public double actionThreshold(double share) {
        Expect.above(0, share, "action threshold as a share of the injury level");
        Expect.within(0, 1, share, "action threshold as a share of the injury level");
        return share * pests();
    }

    /** The same pest and crop at other prices. */
    public InjuryLevel at(double newCost, double newValue) {
        return new InjuryLevel(newCost, newValue, injury, loss, kill);
    }

    /**
     * The most that may be lost before control pays, in percent of the crop: cost over value, both of one
     * unit of area.
     *
     * @param cropValue of the whole crop on the unit of area that {@code cost} refers to, above 0
     */
    public static double allowableLossPercent(double cost, double cropValue) {
        Expect.above(0, cost, "cost of control");
        Expect.above(0, cropValue, "value of the crop");
        return 100 * cost / cropValue;
    }

    /** By which share a printed threshold has moved with the prices: 0.1 for a tenth higher. */
    public static double moved(double printed, double now) {
        Expect.above(0, printed, "printed threshold");
        Expect.above(0, now, "threshold now");
        return now / printed - 1;
    }
}
