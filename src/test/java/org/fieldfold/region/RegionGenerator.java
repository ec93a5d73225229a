package org.fieldfold.region;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Writes a content base of any size, for tests and measurements: entries varied from those of the demo base, guides
 * over them, offices, weather stations and years of weather, in two languages. Everything in it is invented or
 * altered, so nothing in it is advice. The same numbers give the same bytes.
 *
 * <pre>
 * mvn -q exec:java -Dexec.mainClass=org.fieldfold.region.RegionGenerator -Dexec.classpathScope=test \
 *     -Dexec.args="--entries 26 --guides 6 --offices 3100 --years 20 --seed 7 --out DIR"
 * </pre>
 */
public final class RegionGenerator {
    private static final Path DEMO = Path.of("content");
    private static final Pattern SHOWS = Pattern.compile("shows: \\{entry: ([a-z0-9-]+)");

    /**
     * How large a region is.
     *
     * @param years of weather, the last of them 2025
     */
    public record Size(int entries, int guides, int offices, int stations, int years, long seed) {
        public Size {
            for (int count : new int[] {entries, guides, offices, stations, years}) {
                if (count < 1) {
                    throw new IllegalArgumentException("expected at least one of everything, found " + count);
                }
            }
        }

        /** With a station for every fifty offices, and never less than three. */
        public static Size of(int entries, int guides, int offices, int years, long seed) {
            return new Size(entries, guides, offices, Math.max(3, offices / 50), years, seed);
        }
    }

    /** Where the files of a region go. */
    interface Sink {
        void bytes(String path, byte[] bytes);

        default void text(String path, String text) {
            bytes(path, text.getBytes(StandardCharsets.UTF_8));
        }
    }

    private RegionGenerator() {
    }

    public static void main(String[] args) throws IOException {
        SortedMap<String, String> given = new TreeMap<>(Map.of("--entries", "26", "--guides", "6", "--offices",
                "5", "--years", "20", "--seed", "7"));
        for (int i = 0; i + 1 < args.length; i += 2) {
            given.put(args[i], args[i + 1]);
        }
        if (args.length % 2 == 1 || !given.containsKey("--out") || given.size() > 7 || given.size() == 7
                && !given.containsKey("--stations")) {
            System.err.println("expected --entries, --guides, --offices, --stations, --years, --seed each with a "
                    + "number, and --out with a folder; found " + List.of(args));
            System.exit(2);
        }
        Size size = Size.of(number(given, "--entries"), number(given, "--guides"), number(given, "--offices"),
                number(given, "--years"), number(given, "--seed"));
        if (given.containsKey("--stations")) {
            size = new Size(size.entries(), size.guides(), size.offices(), number(given, "--stations"), size.years(),
                    size.seed());
        }
        System.out.println(write(size, Path.of(given.get("--out"))) + " files in " + given.get("--out"));
    }

    private static int number(SortedMap<String, String> given, String option) {
        return Integer.parseInt(given.get(option));
    }

    /**
     * Writes a region.
     *
     * @param folder a new one, or empty
     * @return how many files
     */
    public static int write(Size size, Path folder) throws IOException {
        if (Files.exists(folder.resolve("edition.yaml"))) {
            throw new IOException("expected a new folder, found a content base in " + folder);
        }
        int[] files = {0};
        Sink sink = (path, bytes) -> {
            try {
                Path file = folder.resolve(path);
                Files.createDirectories(file.getParent());
                Files.write(file, bytes);
                files[0]++;
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
        };
        SortedMap<String, String> demo = demo();
        Random chance = new Random(size.seed());
        InventedNames names = new InventedNames(chance);
        RegionEntries entries = new RegionEntries(demo, names, chance, size.entries());
        for (String path : demo.keySet()) {
            if (isShared(path) && isOfAnEntry(path, demo, entries)) {
                sink.text(path, path.endsWith(".svg") ? demo.get(path) : entries.shared(demo.get(path)));
            }
        }
        entries.write(sink);
        entries.guides(size.guides(), sink);
        RegionOffices offices = new RegionOffices(names, chance, size.stations());
        offices.write(size.offices(), sink);
        offices.weather(size.years(), sink);
        return files[0];
    }

    private static boolean isShared(String path) {
        return Stream.of("pests/", "guides/", "offices/").noneMatch(folder -> path.startsWith(folder)
                || path.startsWith("es/" + folder)) && !path.startsWith("weather/");
    }

    /** A drawing of an entry that the region does not have is left out. */
    private static boolean isOfAnEntry(String path, SortedMap<String, String> demo, RegionEntries entries) {
        if (!path.contains("figures/")) {
            return true;
        }
        var shows = SHOWS.matcher(demo.get(path.replaceFirst("^es/", "").replaceFirst("\\.svg$", ".yaml")));
        return !shows.find() || entries.has(shows.group(1)) || demo.containsKey("natural-enemies/" + shows.group(1)
                + ".yaml");
    }

    private static SortedMap<String, String> demo() throws IOException {
        SortedMap<String, String> demo = new TreeMap<>();
        try (Stream<Path> files = Files.walk(DEMO)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String path = DEMO.relativize(file).toString().replace('\\', '/');
                if (!path.startsWith(".") && !path.endsWith(".md") || path.startsWith("chapters/")) {
                    demo.put(path, Files.readString(file));
                }
            }
        }
        return demo;
    }
}
