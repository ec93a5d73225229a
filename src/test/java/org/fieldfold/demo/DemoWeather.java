package org.fieldfold.demo;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;

/**
 * Invents the daily temperatures of the demo region's stations: a yearly wave, weather that lasts some days
 * (a first-order autoregression), years that run warm or cold, and a daily range that is widest in late
 * spring. No measured data are in it. {@link Random} and {@link StrictMath} are specified to the bit, so that
 * the files come out the same on every machine.
 *
 * @param mean yearly mean, °C
 * @param swing half the difference between the warmest and the coldest time of the year, °C
 * @param range mean difference between a day's minimum and maximum, °C
 */
public record DemoWeather(String station, double mean, double swing, double range, long seed) {
    static final LocalDate FIRST = LocalDate.of(2006, 1, 1);
    static final LocalDate LAST = LocalDate.of(2025, 12, 31);

    static final List<DemoWeather> STATIONS = List.of(
            new DemoWeather("lowbridge", 8.6, 13.2, 11.5, 20270101),
            new DemoWeather("hazel-ridge", 6.9, 12.8, 10.0, 20270102),
            new DemoWeather("saltmere", 9.4, 10.9, 7.5, 20270103));

    private static final double PERSISTENCE = 0.72;
    private static final double DAILY_SPREAD = 2.9;
    private static final double YEARLY_SPREAD = 0.7;
    /** The warmest day comes about 24 July, day 205. */
    private static final double WARMEST_DAY = 205;

    /** The station's file: {@code date,min,max} in °C with one decimal. */
    String csv() {
        return csv(FIRST);
    }

    /** The same from another first day, which begins a year. */
    public String csv(LocalDate first) {
        Random chance = new Random(seed);
        StringBuilder rows = new StringBuilder("date,min,max\n");
        double weather = 0;
        double year = 0;
        for (LocalDate day = first; !day.isAfter(LAST); day = day.plusDays(1)) {
            if (day.getDayOfYear() == 1) {
                year = YEARLY_SPREAD * chance.nextGaussian();
            }
            weather = PERSISTENCE * weather + DAILY_SPREAD * StrictMath.sqrt(1 - PERSISTENCE * PERSISTENCE)
                    * chance.nextGaussian();
            double phase = 2 * Math.PI * (day.getDayOfYear() - WARMEST_DAY) / 365.25;
            double middle = mean + year + swing * StrictMath.cos(phase) + weather;
            double spread = range * (1 + 0.25 * StrictMath.cos(phase + 0.9)) + 1.8 * chance.nextGaussian();
            double half = StrictMath.max(1.0, spread) / 2;
            rows.append(day).append(',').append(oneDecimal(middle - half)).append(',')
                    .append(oneDecimal(middle + half)).append('\n');
        }
        return rows.toString();
    }

    private static String oneDecimal(double value) {
        return BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_EVEN).toPlainString();
    }
}
