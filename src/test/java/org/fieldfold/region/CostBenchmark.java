package org.fieldfold.region;

import com.sun.management.GarbageCollectionNotificationInfo;
import com.sun.management.GcInfo;
import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.GarbageCollectorMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.management.NotificationEmitter;
import javax.management.openmbean.CompositeData;
import org.fieldfold.Compiler;
import org.fieldfold.OfficeChoice;
import org.fieldfold.Packs;

/**
 * What a content base costs as it grows: regions of several sizes are generated, and each is checked, compiled or
 * packed in a machine of its own with 512 MB of heap. CPU time comes first, because it does not depend on what else
 * the processors do; it holds the start of the machine and its compiling. The floor is the same bytes written again.
 *
 * <pre>
 * mvn -q exec:java -Dexec.mainClass=org.fieldfold.region.CostBenchmark -Dexec.classpathScope=test \
 *     -Dexec.args="DIR check:26-6-5 compile:26-6-5 pack:26-6-100"
 * </pre>
 *
 * <p>Each size is entries, guides, offices. Without sizes, those of the table in DEVELOPERS.md are measured.
 */
public final class CostBenchmark {
    private static final List<String> TABLE = List.of("check:26-6-5", "check:260-6-5", "check:2600-6-5",
            "check:26-6-100", "check:26-6-1000", "check:26-6-3100", "compile:26-6-5", "compile:260-6-5",
            "compile:26-24-5", "pack:26-6-5", "pack:26-6-100", "pack:26-6-1000", "pack:26-24-100",
            "pack:260-6-100", "pack:26-6-3100");
    private static final long SEED = 7;
    private static final int YEARS = 20;
    private static final Set<String> HEAP = ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(pool -> pool.getType() == MemoryType.HEAP).map(MemoryPoolMXBean::getName)
            .collect(Collectors.toSet());

    private CostBenchmark() {
    }

    /** @param args a folder to work in, and what to measure; {@code run} before both in a machine of its own */
    public static void main(String[] args) throws Exception {
        if (args.length == 3 && args[0].equals("run")) {
            run(Path.of(args[1]), args[2]);
            return;
        }
        if (args.length == 0) {
            System.err.println("expected a folder to work in, and perhaps what to measure, as in check:26-6-5");
            System.exit(2);
        }
        System.out.println("what:entries-guides-offices, s of CPU (of which compiling code, collecting garbage), "
                + "s of wall time, processors busy, heap in use after a collection (largest), files, MB written, s of "
                + "wall time to write the same bytes");
        List<String> wanted = args.length > 1 ? List.of(args).subList(1, args.length) : TABLE;
        for (String one : wanted) {
            Path region = region(Path.of(args[0]), one);
            List<String> command = List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-Xmx512m", "-Djava.awt.headless=true", "-cp", classPath(), CostBenchmark.class.getName(), "run",
                    region.toString(), one);
            int status = new ProcessBuilder(command).inheritIO().start().waitFor();
            if (status != 0) {
                System.out.println(one + ": exit status " + status);
            }
        }
    }

    /** Generated where it is not there yet. */
    private static Path region(Path folder, String what) throws IOException {
        String size = what.substring(what.indexOf(':') + 1);
        Path region = folder.resolve(size);
        if (!Files.exists(region)) {
            int[] counts = Stream.of(size.split("-")).mapToInt(Integer::parseInt).toArray();
            RegionGenerator.write(RegionGenerator.Size.of(counts[0], counts[1], counts[2], YEARS, SEED), region);
        }
        return region;
    }

    private static String classPath() {
        if (CostBenchmark.class.getClassLoader() instanceof URLClassLoader loader) {
            return String.join(":", Stream.of(loader.getURLs()).map(URL::getPath).toList());
        }
        return System.getProperty("java.class.path");
    }

    private static void run(Path region, String one) throws Exception {
        Path out = Files.createTempDirectory(region.toAbsolutePath().getParent(), "out");
        try {
            AtomicLong heap = watch();
            long start = System.nanoTime();
            work(one.substring(0, one.indexOf(':')), region, out);
            double wall = (System.nanoTime() - start) / 1e9;
            double cpu = ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime()
                    / 1e9;
            long compiling = ManagementFactory.getCompilationMXBean().getTotalCompilationTime();
            long collecting = ManagementFactory.getGarbageCollectorMXBeans().stream()
                    .mapToLong(GarbageCollectorMXBean::getCollectionTime).sum();
            List<Path> files = files(out);
            long bytes = 0;
            for (Path file : files) {
                bytes += Files.size(file);
            }
            System.out.printf(Locale.ROOT, "%-16s %7.1f (%.0f, %.0f) %7.1f %5.2f %5d MB %7d %8.1f %6.1f%n", one, cpu,
                    compiling / 1e3, collecting / 1e3, wall, cpu / wall, heap.get() >> 20, files.size(), bytes / 1e6,
                    floor(files, out));
        } finally {
            delete(out);
        }
    }

    /** Notes how much of the heap is in use after each collection. */
    private static AtomicLong watch() {
        AtomicLong most = new AtomicLong();
        for (GarbageCollectorMXBean collector : ManagementFactory.getGarbageCollectorMXBeans()) {
            ((NotificationEmitter) collector).addNotificationListener((note, nothing) -> {
                GcInfo after = GarbageCollectionNotificationInfo.from((CompositeData) note.getUserData()).getGcInfo();
                long used = after.getMemoryUsageAfterGc().entrySet().stream()
                        .filter(pool -> HEAP.contains(pool.getKey()))
                        .mapToLong(pool -> pool.getValue().getUsed()).sum();
                most.accumulateAndGet(used, Math::max);
            }, null, null);
        }
        return most;
    }

    private static void work(String what, Path region, Path out) throws IOException {
        switch (what) {
            case "check" -> Compiler.check(region, Optional.empty());
            case "compile" -> {
                Compiler.Built built = Compiler.compile(new Compiler.Request(region, out, Optional.empty(), false),
                        step -> { });
                require(built.folder());
            }
            case "pack" -> {
                Packs.Packed packed = Packs.pack(new Packs.Request(region, out, Optional.empty(), false,
                        OfficeChoice.of("..", "1/1"), false), (done, made, of) -> { }, () -> false);
                require(packed.folder());
            }
            default -> throw new IllegalArgumentException("expected check, compile or pack, found " + what);
        }
    }

    private static void require(Optional<Path> built) {
        if (built.isEmpty()) {
            throw new IllegalStateException("expected a build, found errors in the region");
        }
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> found = Files.walk(folder)) {
            return found.filter(Files::isRegularFile).sorted().toList();
        }
    }

    /** The same bytes, file by file, written once more by one thread. */
    private static double floor(List<Path> files, Path out) throws IOException {
        Path copies = Files.createDirectories(out.resolve("floor"));
        long nanos = 0;
        List<Path> written = new ArrayList<>();
        for (Path file : files) {
            byte[] bytes = Files.readAllBytes(file);
            Path copy = copies.resolve(String.valueOf(written.size()));
            long start = System.nanoTime();
            Files.write(copy, bytes);
            nanos += System.nanoTime() - start;
            written.add(copy);
        }
        return nanos / 1e9;
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> found = Files.walk(folder)) {
            for (Path path : found.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
