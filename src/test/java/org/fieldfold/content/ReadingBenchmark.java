package org.fieldfold.content;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;

/**
 * What reading a base costs a fresh process, measured and not tested: CPU time from the packed jar with the
 * quick compiler, every file read anew, and taken from what another process has understood. The latter reads
 * the edition's year first, as {@code compile} does. Medians of five, smallest to largest.
 *
 * <pre>
 * mvn -q package -DskipTests
 * mvn -q exec:java -Dexec.mainClass=org.fieldfold.content.ReadingBenchmark -Dexec.classpathScope=test \
 *     -Dexec.args=content
 * </pre>
 */
public final class ReadingBenchmark {
    private static final int ROUNDS = 5;
    private static final String CLASSES = Path.of("target/fieldfold.jar") + java.io.File.pathSeparator
            + Path.of("target/test-classes");

    private ReadingBenchmark() {
    }

    /** With one argument, a base, all that is measured; with two, one reading of it. */
    public static void main(String[] args) throws Exception {
        if (args.length > 1) {
            read(Path.of(args[0]), Path.of(args[1]));
            return;
        }
        Path written = Files.createTempFile("readings", "");
        say("read anew", args[0], "-");
        KeptReadings readings = new KeptReadings();
        readings.load(Path.of(args[0]));
        Files.write(written, readings.bytes());
        say("as an earlier process understood it, " + Files.size(written) / 1000 + " kB", args[0],
                written.toString());
        Files.delete(written);
    }

    private static void read(Path content, Path written) throws IOException {
        OperatingSystemMXBean machine = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        long before = machine.getProcessCpuTime();
        if (Files.exists(written)) {
            BaseLoader.year(content);
            new KeptReadings(Files.readAllBytes(written)).load(content);
        } else {
            BaseLoader.load(content);
        }
        System.out.println((machine.getProcessCpuTime() - before) / 1e9);
    }

    private static void say(String what, String content, String written) throws Exception {
        double[] costs = new double[ROUNDS];
        for (int round = 0; round < ROUNDS; round++) {
            Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java")
                    .toString(), "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp", CLASSES,
                    ReadingBenchmark.class.getName(), content, written)
                    .redirectError(ProcessBuilder.Redirect.INHERIT).start();
            costs[round] = Double.parseDouble(new String(process.getInputStream().readAllBytes(), "UTF-8"));
        }
        Arrays.sort(costs);
        System.out.printf(Locale.ROOT, "%s: %.2f s of CPU (%.2f to %.2f)%n", what, costs[ROUNDS / 2], costs[0],
                costs[ROUNDS - 1]);
    }
}
