package org.fieldfold;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a build costs after one change, measured and not tested: CPU time of a fresh process from the packed
 * jar, with the quick compiler as {@code src/bin/fieldfold} asks for it, and how many sheets it made. The
 * demo base, copied; medians, smallest to largest.
 *
 * <pre>
 * mvn -q package -DskipTests
 * mvn -q exec:java -Dexec.mainClass=org.fieldfold.IncrementBenchmark -Dexec.classpathScope=test -Dexec.args=
 * </pre>
 */
public final class IncrementBenchmark {
    private static final int ROUNDS = Integer.getInteger("rounds", 3);
    private static final String CLASSES = Path.of("target/fieldfold.jar") + java.io.File.pathSeparator
            + Path.of("target/test-classes");

    private IncrementBenchmark() {
    }

    /** One edit of one file; none when the file is empty. */
    private record Edit(String name, String file, String was, String is) {
    }

    /** What a process said of its build. */
    private record Cost(double cpu, int made, int taken) {
    }

    /** Without arguments all that is measured; with some, one build of the process that measures. */
    public static void main(String[] args) throws Exception {
        if (args.length > 1) {
            build(Path.of(args[0]), Path.of(args[1]), args[2].equals("anew"));
            return;
        }
        String classes = args.length == 1 ? args[0] : CLASSES;
        Path folder = Files.createTempDirectory("fieldfold-increment");
        Path content = folder.resolve("content");
        copy(Path.of("content"), content);
        double clean = say("everything made", rounds(() -> run(classes, content, folder.resolve("clean"),
                "anew")), 0);
        run(classes, content, folder.resolve("first"), "kept");
        for (Edit edit : List.of(new Edit("nothing changed", "", "", ""),
                new Edit("one pest's text", "pests/onion-thrips.yaml", "Slim splinter, yellow to brown",
                        "Slim splinter, yellow or brown"),
                new Edit("one material's waiting time", "active-ingredients.yaml",
                "phi-days: {from: 1, to: 7}",
                        "phi-days: {from: 1, to: 8}"),
                new Edit("one office's telephone", "offices/tarnfield.yaml", "555-0122", "555-0123"))) {
            say(edit.name(), rounds(() -> {
                copy(folder.resolve("first"), folder.resolve("out"));
                edit(content, edit);
                Cost cost = run(classes, content, folder.resolve("out"), "kept");
                copy(Path.of("content"), content);
                clear(folder.resolve("out"));
                return cost;
            }), clean);
        }
        clear(folder);
    }

    private static void build(Path content, Path out, boolean anew) throws IOException {
        Compiler.Work work = Compiler.compile(new Compiler.Request(content, out, Optional.empty(), false,
                anew),
                step -> { }).work();
        OperatingSystemMXBean machine = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        System.out.println(machine.getProcessCpuTime() / 1e9 + " " + work.made() + " " + work.taken());
    }

    /** Something that is measured. */
    private interface Measured {
        Cost cost() throws Exception;
    }

    private static List<Cost> rounds(Measured measured) throws Exception {
        List<Cost> costs = new ArrayList<>();
        for (int round = 0; round < ROUNDS; round++) {
            costs.add(measured.cost());
        }
        return costs;
    }

    private static Cost run(String classes, Path content, Path out, String how) throws Exception {
        Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java")
                .toString(),
                "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Djava.awt.headless=true", "-cp", classes,
                IncrementBenchmark.class.getName(), content.toString(), out.toString(), how)
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
        String[] said = new String(process.getInputStream().readAllBytes(), "UTF-8").trim().split(" ");
        if (process.waitFor() != 0) {
            throw new IllegalStateException("exit status " + process.exitValue());
        }
        return new Cost(Double.parseDouble(said[0]), Integer.parseInt(said[1]), Integer.parseInt(said[2]));
    }

    private static double say(String what, List<Cost> costs, double clean) {
        double[] sorted = costs.stream().mapToDouble(Cost::cpu).sorted().toArray();
        double median = sorted[sorted.length / 2];
        Cost last = costs.get(costs.size() - 1);
        System.out.printf(Locale.ROOT, "%-28s %5.1f s of CPU (%.1f to %.1f)%s; files made %d, taken %d%n",
                what, median,
                sorted[0], sorted[sorted.length - 1],
                clean == 0 ? "" : String.format(Locale.ROOT, ", %.0f %%", 100 * median / clean), last.made(),
                last.taken());
        return median;
    }

    /** Changes the first place; put back by copying the file anew. */
    private static void edit(Path content, Edit edit) throws IOException {
        if (!edit.file().isEmpty()) {
            String text = Files.readString(content.resolve(edit.file()));
            int at = text.indexOf(edit.was());
            if (at < 0) {
                throw new IllegalStateException("expected '" + edit.was() + "' in " + edit.file());
            }
            Files.writeString(content.resolve(edit.file()), text.substring(0, at) + edit.is()
                    + text.substring(at + edit.was().length()));
        }
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
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
