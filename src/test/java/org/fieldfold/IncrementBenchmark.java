package org.fieldfold;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fieldfold.region.RegionGenerator;

/**
 * What a build costs after one change, measured and not tested, as CPU time: of the whole command in a fresh
 * process, {@code src/bin/fieldfold} with its archive of loaded classes; and of one build after the other in one
 * process, the same place edited each time, until the code is compiled. {@code demo} is the demo base, copied;
 * {@code region} one of 260 entries from {@link RegionGenerator}. Medians, smallest to largest.
 *
 * <pre>
 * mvn -q package -DskipTests
 * mvn -q exec:java -Dexec.mainClass=org.fieldfold.IncrementBenchmark -Dexec.classpathScope=test -Dexec.args=demo
 * </pre>
 */
public final class IncrementBenchmark {
    private static final int COLD = Integer.getInteger("cold", 3);
    private static final int WARM = Integer.getInteger("warm", 6);
    private static final int EDITS = Integer.getInteger("edits", 4);
    private static final int ENTRIES = 260;
    private static final String CLASSES = Path.of("target/fieldfold.jar") + java.io.File.pathSeparator
            + Path.of("target/test-classes");
    /** More than the builds of which results are kept, so that an edit never comes back to one of them. */
    private static final List<String> WORDS = List.of("now", "too", "yet", "here", "soon", "then");

    private IncrementBenchmark() {
    }

    /**
     * One edit of one file; none when the file is empty.
     *
     * @param place where; its first group is replaced
     * @param by what stands there in round after round
     */
    private record Edit(String name, String file, String place, List<String> by) {
        void make(Path content, int round) throws IOException {
            if (!file.isEmpty()) {
                String text = Files.readString(content.resolve(file));
                Matcher found = Pattern.compile(place).matcher(text);
                if (!found.find()) {
                    throw new IllegalStateException("expected '" + place + "' in " + file);
                }
                Files.writeString(content.resolve(file), text.substring(0, found.start(1))
                        + by.get(round % by.size()) + text.substring(found.end(1)));
            }
        }
    }

    /** Measures a base; or builds again and again in the process that is measured. */
    public static void main(String[] args) throws Exception {
        if (args[0].equals("warm")) {
            warm(Path.of(args[1]), Path.of(args[2]), new Edit("", args[3], args[4], List.of(args[5].split(" "))),
                    args[6].equals("anew"));
            return;
        }
        Path folder = Files.createTempDirectory("fieldfold-increment");
        Path base = folder.resolve("base");
        if (args[0].equals("region")) {
            RegionGenerator.write(RegionGenerator.Size.of(ENTRIES, 20, 5, 5, 7), base);
        } else {
            copy(Path.of("content"), base);
        }
        measure(folder, base, edits(base).subList(0, EDITS));
        clear(folder);
    }

    private static List<Edit> edits(Path base) throws IOException {
        return List.of(new Edit("nothing changed", "", "", List.of()),
                new Edit("one pest's text", "pests/" + pest(base) + ".yaml", "[a-z]( [a-z]+)\\.\\n",
                        WORDS.stream().map(word -> " " + word).toList()),
                new Edit("one office's telephone", "offices/" + first(base.resolve("offices")),
                        "555-01(\\d\\d)", List.of("81", "82", "83", "84", "85", "86")),
                new Edit("one material's waiting time", "active-ingredients.yaml",
                        "phi-days: \\{from: 1, to: (\\d+)", List.of("8", "9", "10", "11", "12", "13")));
    }

    /** The first entry of the first guide. */
    private static String pest(Path base) throws IOException {
        Path guides = base.resolve("guides");
        Matcher entries = Pattern.compile("entries:\\s*(?:\\[|-)\\s*([a-z0-9-]+)")
                .matcher(Files.readString(guides.resolve(first(guides))));
        if (!entries.find()) {
            throw new IllegalStateException("expected entries in the first guide of " + base);
        }
        return entries.group(1);
    }

    private static String first(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().findFirst().orElseThrow();
        }
    }

    private static void measure(Path folder, Path base, List<Edit> edits) throws Exception {
        Path content = folder.resolve("content");
        copy(base, content);
        cold(content, folder.resolve("first"), List.of());
        double clean = say("everything made, cold", rounds(COLD, round -> cold(content, folder.resolve("clean"),
                List.of("--anew"))), 0);
        for (Edit edit : edits) {
            say(edit.name() + ", cold", rounds(COLD, round -> {
                clear(folder.resolve("out"));
                copy(folder.resolve("first"), folder.resolve("out"));
                copy(base, content);
                edit.make(content, 1 + round);
                return cold(content, folder.resolve("out"), List.of());
            }), clean);
        }
        Edit text = edits.get(1);
        double[] all = warm(folder, base, text, "anew");
        double warm = say("everything made, warm", all, 0);
        for (Edit edit : edits) {
            say(edit.name() + ", warm", warm(folder, base, edit, "kept"), warm);
        }
    }

    /** What is measured, in a round. */
    private interface Measured {
        double cost(int round) throws Exception;
    }

    private static double[] rounds(int rounds, Measured measured) throws Exception {
        double[] costs = new double[rounds];
        for (int round = 0; round < rounds; round++) {
            costs[round] = measured.cost(round);
        }
        return costs;
    }

    /** CPU seconds of the command, told by the shell that waited for it. */
    private static double cold(Path content, Path out, List<String> more) throws Exception {
        List<String> command = new ArrayList<>(List.of("sh", "-c",
                "src/bin/fieldfold compile \"$@\" >&2 || exit 1; times", "sh", "--content", content.toString(),
                "--out", out.toString()));
        command.addAll(more);
        Process process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
        String[] said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).trim()
                .split("\\s+");
        if (process.waitFor() != 0) {
            throw new IllegalStateException("expected a build of " + content + ", found none");
        }
        return seconds(said[2]) + seconds(said[3]);
    }

    /** As in {@code 0m5.470s}. */
    private static double seconds(String said) {
        String[] parts = said.replace("s", "").split("m");
        return 60 * Double.parseDouble(parts[0]) + Double.parseDouble(parts[1]);
    }

    private static double[] warm(Path folder, Path base, Edit edit, String how) throws Exception {
        Path content = folder.resolve("content");
        copy(base, content);
        clear(folder.resolve("out"));
        if (how.equals("kept")) {
            copy(folder.resolve("first"), folder.resolve("out"));
        }
        Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Djava.awt.headless=true", "-Dwarm=" + WARM, "-cp",
                CLASSES,
                IncrementBenchmark.class.getName(), "warm", content.toString(), folder.resolve("out").toString(),
                edit.file(), edit.place(), String.join(" ", edit.by().stream().map(String::strip).toList()), how)
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).trim();
        if (process.waitFor() != 0) {
            throw new IllegalStateException("exit status " + process.exitValue());
        }
        String[] lines = said.split("\n");
        System.out.println("    " + lines[1]);
        return Arrays.stream(lines[0].split(" ")).mapToDouble(Double::parseDouble).toArray();
    }

    /** Says what each of the later builds cost: by then what they run is compiled. */
    private static void warm(Path content, Path out, Edit edit, boolean anew) throws IOException {
        OperatingSystemMXBean machine = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        Edit spaced = new Edit("", edit.file(), edit.place(), edit.by().stream().map(word ->
                edit.place().contains("( ") ? " " + word : word).toList());
        StringBuilder costs = new StringBuilder();
        Compiler.Work work = new Compiler.Work(0, 0);
        for (int round = 0; round < WARM; round++) {
            spaced.make(content, round);
            long before = machine.getProcessCpuTime();
            Compiler.Built built = Compiler.compile(new Compiler.Request(content, out, Optional.empty(), false,
                    anew), step -> { });
            if (built.folder().isEmpty()) {
                throw new IllegalStateException("expected a build of " + content + ", found none");
            }
            work = built.work();
            if (round >= WARM / 2) {
                costs.append((machine.getProcessCpuTime() - before) / 1e9).append(' ');
            }
        }
        System.out.println(costs.toString().trim());
        System.out.println("files made " + work.made() + ", taken " + work.taken());
    }

    private static double say(String what, double[] costs, double clean) {
        double[] sorted = costs.clone();
        Arrays.sort(sorted);
        double median = sorted[sorted.length / 2];
        System.out.printf(Locale.ROOT, "%-34s %6.2f s of CPU (%.2f to %.2f)%s%n", what, median, sorted[0],
                sorted[sorted.length - 1], clean == 0 ? "" : String.format(Locale.ROOT, ", %.0f %%",
                100 * median / clean));
        return median;
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = to.resolve(from.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }

    private static void clear(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
