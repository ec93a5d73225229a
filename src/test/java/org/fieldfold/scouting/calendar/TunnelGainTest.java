package org.fieldfold.scouting.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.MonthDay;
import org.fieldfold.scouting.degreeday.HeatEvent;
import org.fieldfold.scouting.degreeday.HeatModel;
import org.fieldfold.scouting.degreeday.HeatSum;
import org.fieldfold.scouting.degreeday.Seattle;
import org.fieldfold.scouting.degreeday.TemperatureRecord;
import org.fieldfold.scouting.degreeday.TemperatureUnit;
import org.junit.jupiter.api.Test;

class TunnelGainTest {
    private static final TemperatureRecord OPEN = Seattle.record();
    private static final LocalDate FIRST = LocalDate.of(2013, 1, 1);
    private static final LocalDate LAST = LocalDate.of(2013, 12, 31);

    // all temperatures up by g is the same as all thresholds down by g
    @Test
    void aGainByDayAndNightIsALowerThreshold() {
        TemperatureRecord under = TunnelGain.allYear(TemperatureUnit.FAHRENHEIT, 9, 9).under(OPEN);
        double warm = HeatSum.of(HeatModel.singleSine(TemperatureUnit.CELSIUS, 10, 31), under, FIRST, LAST)
                .total();
        double low = HeatSum.of(HeatModel.singleSine(TemperatureUnit.CELSIUS, 5, 26), OPEN, FIRST, LAST)
                .total();
        assertEquals(low, warm, 1e-6);
    }

    // common practice, no source: a plastic low tunnel runs about 10 to 15 °F warmer than the open by day
    @Test
    void anEventComesEarlierUnderPlasticAndOnlyWhileCovered() {
        HeatEvent event = new HeatEvent(HeatModel.singleSine(TemperatureUnit.FAHRENHEIT, 50), 250,
                new HeatEvent.OnDay(MonthDay.of(1, 1)));
        TunnelGain gain = TunnelGain.allYear(TemperatureUnit.FAHRENHEIT, 12, 0);
        MonthDay open = EventDates.of(event, OPEN).early().orElseThrow();
        MonthDay covered = EventDates.of(event, gain.under(OPEN)).early().orElseThrow();
        assertTrue(covered.isBefore(open), covered + " " + open);
        TunnelGain autumn = new TunnelGain(TemperatureUnit.FAHRENHEIT, 12, 0, MonthDay.of(9, 1),
                MonthDay.of(10, 1));
        assertEquals(open, EventDates.of(event, autumn.under(OPEN)).early().orElseThrow());
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> TunnelGain.allYear(TemperatureUnit.CELSIUS, 5, 6));
        assertThrows(IllegalArgumentException.class, () -> new TunnelGain(TemperatureUnit.CELSIUS, 5, 1,
                MonthDay.of(6, 1), MonthDay.of(5, 1)));
    }
}
