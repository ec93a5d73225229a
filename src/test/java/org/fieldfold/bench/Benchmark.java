package org.fieldfold.bench;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.fieldfold.Compiler;

/**
 * What a build costs, measured and not tested. Cold: a fresh process from the packed jar, wall time. Warm:
 * the whole pipeline inside this process after some rounds, CPU time of all its threads. Medians of several
 * rounds.
 *
 * <pre>
 * mvn -q package -DskipTests
 * mvn -q exec:java -Dexec.mainClass=org.fieldfold.bench.Benchmark -Dexec.classpathScope=test -Dexec.args=
 * </pre>
 */
public final class Benchmark {
    private static final int COLD_ROUNDS = 7;
    private static final int WARM_ROUNDS = 15;
    private static final Path JAR = Path.of("target/fieldfold.jar");
    private static final Path ARCHIVE = Path.of("target/fieldfold.jsa");

    private Benchmark() {
    }

    /** What is measured, in order; what needs the jar is left out, and said, when it is not packed. */
    public static void main(String[] args) throws Exception {
        Path out = Files.createTempDirectory("fieldfold-bench");
        System.out.printf("%d processors, Java %s, load before %.1f%n",
                Runtime.getRuntime().availableProcessors(), System.getProperty("java.version"),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage());
        if (Files.exists(JAR)) {
            cold("cold, check", List.of(), "check");
            cold("cold, compile", List.of(), "compile", "--anew", "--out", out.toString());
            run(List.of("-XX:ArchiveClassesAtExit=" + ARCHIVE), "compile", "--anew", "--out", out.toString());
            List<String> shared = List.of("-XX:SharedArchiveFile=" + ARCHIVE, "-XX:TieredStopAtLevel=1",
                    "-XX:+UseSerialGC");
            cold("cold, check, shared classes", shared, "check");
            cold("cold, compile, shared classes", shared, "compile", "--anew", "--out", out.toString());
        } else {
            System.out.println("no " + JAR + ": pack it first for the cold figures");
        }
        warm(out);
    }

    private static void warm(Path out) throws IOException {
        Path content = Path.of("content");
        for (int i = 0; i < WARM_ROUNDS; i++) {
            Compiler.check(content, Optional.empty());
            Compiler.compile(new Compiler.Request(content, out, Optional.empty(), true), what -> { });
        }
        double[] check = new double[WARM_ROUNDS];
        double[] compile = new double[WARM_ROUNDS];
        for (int i = 0; i < WARM_ROUNDS; i++) {
            long start = cpu();
            Compiler.check(content, Optional.empty());
            check[i] = (cpu() - start) / 1e6;
            start = cpu();
            Compiler.compile(new Compiler.Request(content, out, Optional.empty(), true), what -> { });
            compile[i] = (cpu() - start) / 1e6;
        }
        long sheets;
        try (Stream<Path> files = Files.walk(out)) {
            sheets = files.filter(file -> file.toString().endsWith(".pdf")).count();
        }
        say("warm, check", check, "ms of CPU");
        say("warm, compile", compile, "ms of CPU");
        System.out.printf(Locale.ROOT, "%-34s %d%n", "sheets in a build", sheets);
    }

    private static void cold(String what, List<String> options, String... command) throws Exception {
        double[] rounds = new double[COLD_ROUNDS];
        for (int i = 0; i < COLD_ROUNDS; i++) {
            long start = System.nanoTime();
            run(options, command);
            rounds[i] = (System.nanoTime() - start) / 1e6;
        }
        say(what, rounds, "ms of wall time");
    }

    private static void run(List<String> options, String... command) throws Exception {
        List<String> line = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        line.addAll(options);
        line.addAll(List.of("-jar", JAR.toString()));
        line.addAll(Arrays.asList(command));
        Process process = new ProcessBuilder(line).redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
        int status = process.waitFor();
        if (status != 0) {
            throw new IllegalStateException("exit status " + status + " of " + line);
        }
    }

    private static long cpu() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }

    private static void say(String what, double[] rounds, String unit) {
        double[] sorted = rounds.clone();
        Arrays.sort(sorted);
        System.out.printf(Locale.ROOT, "%-34s median %.0f %s (%.0f to %.0f)%n", what,
                sorted[sorted.length / 2], unit, sorted[0], sorted[sorted.length - 1]);
    }
}
