package org.fieldfold.scouting.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * Largest holes that stopped them in trials: abstract of J. Entomol. Sci. 26:169 (meridian.allenpress.com),
 * screen hole size and barriers: leafminer 640, whitefly 462, melon aphid 341, western flower thrips 192
 * micrometres. It says that width and hole alone do not decide. Thorax widths: value from memory.
 */
class NetChoiceTest {
    private static final List<NetBody> TRIED = List.of(new NetBody("leafminer", 0.653,
            OptionalDouble.of(0.640)), new NetBody("whitefly", 0.261, OptionalDouble.of(0.462)),
            new NetBody("melon aphid", 0.355, OptionalDouble.of(0.341)),
            new NetBody("thrips", 0.215, OptionalDouble.of(0.192)));

    @Test
    void thisNetStopsTheseNotThose() {
        NetChoice net = NetChoice.of(0.35, TRIED);
        assertEquals(List.of("leafminer", "whitefly"), net.stops());
        assertEquals(List.of("melon aphid", "thrips"), net.letsThrough());
        assertEquals(List.of(), NetChoice.of(0.192, TRIED).letsThrough());
        assertEquals(List.of(), NetChoice.of(0.65, TRIED).stops());
    }

    @Test
    void theCoarsestNetIsThatOfTheSmallest() {
        assertEquals(OptionalDouble.of(0.192), NetChoice.coarsest(TRIED));
        assertEquals(OptionalDouble.of(0.341), NetChoice.coarsest(TRIED.subList(0, 3)));
        assertEquals(OptionalDouble.empty(), NetChoice.coarsest(List.of()));
    }

    @Test
    void withoutATrialTheWidthDecidesWithAMargin() {
        NetBody fly = new NetBody("fly", 1.6, OptionalDouble.empty());
        assertEquals(1.36, fly.largestHoleMm(), 1e-12);
        assertEquals(List.of("fly"), NetChoice.of(1.3, List.of(fly)).stops());
        assertEquals(List.of("fly"), NetChoice.of(1.4, List.of(fly)).letsThrough());
        assertThrows(IllegalArgumentException.class, () -> new NetBody("fly", 0, OptionalDouble.empty()));
        assertThrows(IllegalArgumentException.class, () -> NetChoice.of(0, TRIED));
    }
}
