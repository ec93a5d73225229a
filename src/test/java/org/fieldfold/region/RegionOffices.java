package org.fieldfold.region;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Random;
import org.fieldfold.demo.DemoWeather;

/** Offices, each in a county of its own, and the weather stations near them; all invented. */
final class RegionOffices {
    private static final String[][] DAYS = {{"Monday to Friday", "lunes a viernes"},
            {"Monday and Thursday", "lunes y jueves"}, {"Tuesday and Friday", "martes y viernes"}};

    private final InventedNames names;
    private final Random chance;
    private final int stations;

    RegionOffices(InventedNames names, Random chance, int stations) {
        this.names = names;
        this.chance = chance;
        this.stations = stations;
    }

    void write(int count, RegionGenerator.Sink sink) {
        for (int i = 0; i < count; i++) {
            office(i, sink);
        }
    }

    /** Telephone numbers are from the reserved 555-0100 to 555-0199, so that in a large region many are shared. */
    private void office(int number, RegionGenerator.Sink sink) {
        String town = names.town(number);
        String id = town.toLowerCase(Locale.ROOT).replace(' ', '-');
        String name = town + " County Office";
        String[] days = DAYS[chance.nextInt(DAYS.length)];
        int from = 7 + chance.nextInt(3);
        int to = 3 + chance.nextInt(3);
        String hours = days[0] + ", " + from + " to " + to;
        String person = names.person();
        sink.text("offices/" + id + ".yaml", "name: " + name + "\ncounty: " + town + "\nlanguages: [en, es]\npaper: "
                + (chance.nextInt(5) == 0 ? "a4" : "letter") + "\nstation: " + station(number % stations)
                + "\ncontact:\n  phone: 555-01" + twoDigits(chance.nextInt(100)) + "\n  email: " + id
                + "@offices.example\n  address: [\"" + (1 + chance.nextInt(90)) + " Weir Street\", \"" + town
                + "\"]\n  hours: " + hours + "\n  people: [" + person + "]\n");
        sink.text("es/offices/" + id + ".yaml", Rewriting.passage("name", name, "Oficina del Condado de " + town)
                + Rewriting.passage("contact/hours", hours, days[1] + ", de " + from + " a " + to)
                + Rewriting.passage("contact/people", person, person));
    }

    private static String station(int number) {
        return "station-" + (number + 1);
    }

    private static String twoDigits(int number) {
        return String.format(Locale.ROOT, "%02d", number);
    }

    void weather(int years, RegionGenerator.Sink sink) {
        for (int i = 0; i < stations; i++) {
            DemoWeather invented = new DemoWeather(station(i), 7.5 + 1.8 * chance.nextDouble(),
                    11 + 2 * chance.nextDouble(), 8 + 3 * chance.nextDouble(), chance.nextLong());
            sink.text("weather/" + station(i) + ".csv", invented.csv(LocalDate.of(2026 - years, 1, 1)));
        }
    }
}
