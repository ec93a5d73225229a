package org.fieldfold;

import com.sun.management.OperatingSystemMXBean;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.lang.management.ManagementFactory;
import java.net.URI;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntFunction;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.edition.Ledger;
import org.fieldfold.edition.Snapshot;
import org.fieldfold.entry.ContentBase;

/**
 * How long a save of the demo base, of which an edition was issued before, takes to be seen: from the moment
 * the file is written until a client that listens on loopback holds the answer with panels and findings, and
 * the page of the handbook. What the browser then does with them is not in it. Medians (smallest to largest)
 * of rounds, in a machine of its own with the flags of {@code src/bin/fieldfold}; CPU time is that of the whole
 * process, the client's included.
 * Behind each part stands the CPU time of the thread that did it: on a busy machine only that says much.
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.mainClass=org.fieldfold.PreviewBenchmark -Dexec.classpathScope=test \
 *     -Dexec.args=20
 * </pre>
 */
public final class PreviewBenchmark {
    private static final String ENTRY = "onion-thrips";
    private static final String FILE = "pests/" + ENTRY + ".yaml";
    private static final Part NONE = new Part(0, 0);
    private static final long REST_MILLIS = 200;

    private final Path content;
    private final Map<String, Kind> kinds = new LinkedHashMap<>();
    private final Map<String, Moment> steps = new LinkedHashMap<>();
    private final OperatingSystemMXBean machine =
            (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    private String last = "";

    /** A file, and what a save of a round puts in the place of what. */
    private record Kind(String file, String was, IntFunction<String> becomes) {
    }

    /** A clock, and the CPU time of the thread that looked at it, in nanoseconds. */
    private record Moment(long wall, long thread, long cpu) {
        static Moment now() {
            return new Moment(System.nanoTime(), Thread.currentThread().getId(),
                    ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime());
        }
    }

    /** A part of a save in milliseconds; the CPU time is that of the thread that did it. */
    private record Part(double wall, double cpu) {
        static Part between(Moment before, Moment after) {
            return new Part((after.wall() - before.wall()) / 1e6,
                    after.thread() == before.thread() ? (after.cpu() - before.cpu()) / 1e6 : 0);
        }
    }

    private PreviewBenchmark(Path content) {
        this.content = content;
        kinds.put("a pest's text", new Kind(FILE, "Slim splinter", i -> (i % 2 == 0 ? "Thin" : "Lean")
                + " splinter"));
        kinds.put("a threshold", new Kind(FILE, "value: 3\n", i -> "value: 2\n"));
        kinds.put("a crop", new Kind("crops.yaml", "name: onion\n", i -> i % 2 == 0 ? "name: bulb onion\n"
                : "name: onion\n"));
        kinds.put("a material", new Kind("active-ingredients.yaml", "name: spinosad\n",
                i -> i % 2 == 0 ? "name: spinosad bait\n" : "name: spinosad\n"));
        kinds.put("a translation", new Kind("es/" + FILE, "of: 76277cf6",
                i -> i % 2 == 0 ? "of: 00000000" : "of: 76277cf6"));
        kinds.put("a broken save", new Kind(FILE, "crops: [onion,", i -> "crops: [[onion,"));
        kinds.put("mended again", new Kind(FILE, "crops: [onion,", i -> "crops: [onion,"));
    }

    /** @param args how many rounds; {@code here} behind it measures in this process */
    public static void main(String[] args) throws Exception {
        String rounds = args.length > 0 ? args[0] : "20";
        if (args.length > 1) {
            measure(Integer.parseInt(rounds));
            return;
        }
        int status = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Djava.awt.headless=true", "-cp", classPath(),
                PreviewBenchmark.class.getName(), rounds, "here").inheritIO().start().waitFor();
        if (status != 0) {
            throw new IllegalStateException("the measurement ended with status " + status);
        }
    }

    /** Also of a program that a build tool runs in its own loader. */
    private static String classPath() {
        if (PreviewBenchmark.class.getClassLoader() instanceof URLClassLoader loader) {
            return String.join(":", Stream.of(loader.getURLs()).map(URL::getPath).toList());
        }
        return System.getProperty("java.class.path");
    }

    private static void measure(int rounds) throws Exception {
        Path folder = Files.createTempDirectory("preview-benchmark");
        try {
            Path content = folder.resolve("content");
            FolderCopy.of(Path.of("content"), content);
            issue(content);
            new PreviewBenchmark(content).rounds(rounds);
        } finally {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    /** An edition before this one, with which every save is compared. */
    private static void issue(Path content) throws IOException {
        ContentBase base = BaseLoader.load(content).base().orElseThrow();
        Files.createDirectories(content.resolve("issued"));
        Files.writeString(content.resolve("issued/2026.json"), new Ledger(2026, LocalDate.of(2026, 1, 15),
                Compiler.VERSION, Optional.empty(), Snapshot.of(base), new TreeMap<>()).text());
    }

    private void rounds(int rounds) throws Exception {
        Map<String, List<Save>> saves = new LinkedHashMap<>();
        long start = System.nanoTime();
        try (Preview preview = Preview.open(content, Optional.empty(), 0, System.out::println, this::step)) {
            System.out.printf(Locale.ROOT, "ready after %.1f s%n", (System.nanoTime() - start) / 1e9);
            try (BufferedReader events = reader(preview.address() + "events/" + ENTRY)) {
                events.readLine();
                last = view(preview);
                for (int round = 0; round <= rounds; round++) {
                    for (Map.Entry<String, Kind> kind : kinds.entrySet()) {
                        Thread.sleep(REST_MILLIS);
                        Save save = save(preview, events, kind.getKey(), kind.getValue(), round);
                        saves.computeIfAbsent(kind.getKey(), none -> new ArrayList<>()).add(save);
                    }
                }
            }
        }
        saves.forEach(PreviewBenchmark::print);
    }

    /** What one save took, in milliseconds, and its parts. */
    private record Save(double wall, double cpu, Map<String, Part> parts) {
    }

    private void step(String what) {
        synchronized (steps) {
            steps.put(what, Moment.now());
        }
    }

    private Save save(Preview preview, BufferedReader events, String name, Kind kind, int round)
            throws IOException {
        Path file = content.resolve(kind.file());
        Path whole = Path.of("content").resolve(kind.file());
        String text = Files.readString(whole);
        String saved = text.replaceFirst(Pattern.quote(kind.was()),
                Matcher.quoteReplacement(kind.becomes().apply(round)));
        if (!text.contains(kind.was())) {
            throw new IllegalStateException("expected '" + kind.was() + "' in " + whole + ", found none");
        }
        synchronized (steps) {
            steps.clear();
        }
        long cpu = machine.getProcessCpuTime();
        Files.writeString(file, saved);
        long start = System.nanoTime();
        String heard;
        do {
            heard = events.readLine();
        } while (!heard.startsWith("data: "));
        step("event");
        String view = view(preview);
        long end = System.nanoTime();
        if (view.equals(last)) {
            throw new IllegalStateException("expected another answer after " + name + ", found the same");
        }
        last = view;
        Map<String, Part> parts = new LinkedHashMap<>();
        Moment before = new Moment(start, 0, 0);
        step("answer");
        synchronized (steps) {
            for (Map.Entry<String, Moment> step : steps.entrySet()) {
                parts.put(step.getKey(), Part.between(before, step.getValue()));
                before = step.getValue();
            }
        }
        return new Save((end - start) / 1e6, (machine.getProcessCpuTime() - cpu) / 1e6, parts);
    }

    /** Everything that the page asks for after an event, without the version's number. */
    private static String view(Preview preview) throws IOException {
        String view = get(preview.address() + "entry/" + ENTRY + ".json");
        String book = view.replaceFirst("(?s).*\"book\" ?: ?\"([^\"]*)\".*", "$1");
        return view.replaceFirst("\"version\" ?: ?\\d+", "") + get(preview.address() + book.substring(1));
    }

    private static String get(String address) throws IOException {
        try (InputStream in = URI.create(address).toURL().openStream()) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static BufferedReader reader(String address) throws IOException {
        return new BufferedReader(new InputStreamReader(URI.create(address).toURL().openStream(),
                StandardCharsets.UTF_8));
    }

    private static void print(String kind, List<Save> saves) {
        List<Save> warm = saves.subList(1, saves.size());
        System.out.printf(Locale.ROOT, "%-14s %s ms, CPU %s ms; the first one %.0f ms%n", kind,
                spread(warm, Save::wall), spread(warm, Save::cpu),
                saves.get(0).wall());
        StringBuilder parts = new StringBuilder();
        for (String part : warm.get(0).parts().keySet()) {
            parts.append(String.format(Locale.ROOT, "%s%s %.0f (%.0f)", parts.length() == 0 ? "" : ", ", part,
                    median(warm, save -> save.parts().getOrDefault(part, NONE).wall()),
                    median(warm, save -> save.parts().getOrDefault(part, NONE).cpu())));
        }
        System.out.println("    wall (CPU): " + parts);
    }

    private static String spread(List<Save> saves, ToDoubleFunction<Save> measured) {
        DoubleSummaryStatistics all = saves.stream().mapToDouble(measured).summaryStatistics();
        return String.format(Locale.ROOT, "%.0f (%.0f to %.0f)", median(saves, measured), all.getMin(),
                all.getMax());
    }

    private static double median(List<Save> saves, ToDoubleFunction<Save> measured) {
        return saves.stream().mapToDouble(measured).sorted().toArray()[saves.size() / 2];
    }
}
