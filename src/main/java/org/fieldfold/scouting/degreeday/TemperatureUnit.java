package org.fieldfold.scouting.degreeday;

/**
 * Degrees Celsius or Fahrenheit. A temperature or a threshold converts with the 32; a sum of degree-days, a
 * gain or any other difference converts without it. Nothing is rounded on the way.
 */
public enum TemperatureUnit {
    CELSIUS("°C"),
    FAHRENHEIT("°F");

    private static final double F_PER_C = 1.8;
    private static final double F_AT_0_C = 32;

    private final String symbol;

    TemperatureUnit(String symbol) {
        this.symbol = symbol;
    }

    public String symbol() {
        return symbol;
    }

    /** A temperature of this unit in {@code other}: 50 °F is 10 °C. */
    public double temperatureIn(TemperatureUnit other, double temperature) {
        if (this == other) {
            return temperature;
        }
        return this == CELSIUS ? temperature * F_PER_C + F_AT_0_C : (temperature - F_AT_0_C) / F_PER_C;
    }

    /** A difference or a sum of degree-days of this unit in {@code other}: 1,080 °F-days are 600 °C-days. */
    public double differenceIn(TemperatureUnit other, double difference) {
        if (this == other) {
            return difference;
        }
        return this == CELSIUS ? difference * F_PER_C : difference / F_PER_C;
    }

    /**
     * Whether a pair of totals meant as equal was converted like a temperature: the Celsius total lies nearer
     * to {@code (f - 32) / 1.8} than to {@code f / 1.8}.
     *
     * @param fahrenheitDays a sum in °F-days
     * @param celsiusDays the same sum as printed in °C-days
     */
    public static boolean convertedLikeTemperature(double fahrenheitDays, double celsiusDays) {
        double asSum = Math.abs(FAHRENHEIT.differenceIn(CELSIUS, fahrenheitDays) - celsiusDays);
        double asTemperature = Math.abs(FAHRENHEIT.temperatureIn(CELSIUS, fahrenheitDays) - celsiusDays);
        return asTemperature < asSum;
    }
}
