package org.fieldfold;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.entry.Contact;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Office;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.manuscript.GuideWriter;
import org.fieldfold.manuscript.OfficePanel;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.pdf.Press;
import org.fieldfold.pdf.PressStages;
import org.fieldfold.source.Span;

/**
 * What the copies of a guide cost, warm: CPU time of one thread, medians of rounds. Then, in a machine of its
 * own with 256 MB, a thousand offices on two threads: how busy both are, and whether memory stays flat. The
 * offices are invented from a seed.
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.mainClass=org.fieldfold.OfficeBenchmark -Dexec.classpathScope=test \
 *     -Dexec.args=
 * </pre>
 */
public final class OfficeBenchmark {
    private static final int WARM = 400;
    private static final int ROUNDS = 11;
    private static final int COPIES = 20;
    private static final int OFFICES = 1000;
    private static final int BATCH = 250;
    private static final String GUIDE = "brassicas";
    /** An office that leaves nothing out and notes nothing. */
    private static final String STATION = "lowbridge";

    private final Press press;
    private final ContentBase base;
    private final Map<String, byte[]> figures = new TreeMap<>();
    private final List<OfficePanel> offices = new ArrayList<>();

    private OfficeBenchmark() throws IOException {
        base = BaseLoader.load(Path.of("content")).base().orElseThrow();
        base.figures().forEach((id, figure) -> figures.put(id, figure.value().bytes()));
        press = Press.of(figures);
        Random chance = new Random(2027);
        Span origin = base.edition().at("contact");
        for (int i = 0; i < OFFICES; i++) {
            offices.add(office(chance, base.offices().get(STATION).value(), origin));
        }
        Set<Integer> characters = new TreeSet<>();
        PrintRun run = run();
        Stream.concat(Stream.of(run.generic()), offices.stream()).forEach(office ->
                characters.addAll(run.job(run.set(office), FlipEdge.SHORT).characters()));
        press.freeze(characters);
    }

    /**
     * Invented: names of syllables, telephone numbers from the reserved 555-0100 to 555-0199.
     *
     * @param like whose station and choices they have
     */
    private static OfficePanel office(Random chance, Office like, Span origin) {
        String[] first = {"Alder", "Birch", "Cold", "Dun", "Ember", "Fallow", "Gorse", "Hollow", "Inver"};
        String[] last = {"brook", "field", "ford", "ham", "holt", "mere", "moor", "ridge", "stead", "wick"};
        String town = first[chance.nextInt(first.length)] + last[chance.nextInt(last.length)];
        return new OfficePanel(town + " County Office", new Contact("555-01" + (10 + chance.nextInt(90)),
                town.toLowerCase(Locale.ROOT) + "@marrowvalley.example",
                List.of(1 + chance.nextInt(90) + " " + last[chance.nextInt(last.length)] + " Lane", town),
                "Monday to Friday, " + (7 + chance.nextInt(3)) + " to " + (3 + chance.nextInt(3)),
                List.of()), Optional.of(like), List.of(), List.of(), origin);
    }

    private PrintRun run() {
        GuideWriter writer = new GuideWriter(base, Phrases.in("en"));
        return PrintRun.of(base, base.guides().get(GUIDE), "en", "letter", writer, false, press)
                .orElseThrow();
    }

    private byte[] print(PrintRun run, OfficePanel office) {
        return press.print(run.job(office, FlipEdge.SHORT));
    }

    /** @param args {@code offices} for the thousand offices alone; otherwise everything */
    public static void main(String[] args) throws Exception {
        if (args.length > 0 && args[0].equals("offices")) {
            new OfficeBenchmark().offices();
        } else {
            new OfficeBenchmark().copies();
            int status = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-Xmx256m", "-Djava.awt.headless=true", "-cp", classPath(),
                    OfficeBenchmark.class.getName(), "offices").inheritIO().start().waitFor();
            System.out.println(status == 0 ? "" : "the run with 256 MB failed");
        }
    }

    /** Also of a program that a build tool runs in its own loader. */
    private static String classPath() {
        if (OfficeBenchmark.class.getClassLoader() instanceof URLClassLoader loader) {
            return String.join(":", Stream.of(loader.getURLs()).map(URL::getPath).toList());
        }
        return System.getProperty("java.class.path");
    }

    private void copies() {
        PrintRun run = run();
        OfficePanel generic = run.generic();
        for (int i = 0; i < WARM; i++) {
            print(run, offices.get(i));
        }
        byte[] sheet = print(run, generic);
        System.out.printf(Locale.ROOT, "%s on letter: %d panels, %d bytes%n", GUIDE,
                run.set(generic).panels().size(), sheet.length);
        rounds("a guide set and printed as if it were the only one", 8, i -> print(run(), generic));
        rounds("a guide set already, printed", COPIES, i -> press.print(run.job(run.set(generic), FlipEdge.SHORT)));
        rounds("  an office's cover and last section written", COPIES, i -> run.manuscript(offices.get(i)));
        rounds("an office's copy of a guide that is set", COPIES, i -> run.set(offices.get(i)));
        rounds("an office's copy set and printed", COPIES, i -> print(run, offices.get(i)));
        PressStages.of(run.job(run.set(generic), FlipEdge.SHORT), press, figures).forEach((what, stage) -> {
            IntStream.range(0, WARM).forEach(i -> stage.run());
            rounds("  " + what, COPIES, i -> {
                stage.run();
                return what;
            });
        });
    }

    private interface Work {
        Object copy(int i);
    }

    private static void rounds(String what, int copies, Work work) {
        double[] rounds = new double[ROUNDS];
        for (int round = 0; round < ROUNDS; round++) {
            long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            for (int i = 0; i < copies; i++) {
                work.copy(round * copies + i);
            }
            rounds[round] = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start)
                    / 1e6 / copies;
        }
        Arrays.sort(rounds);
        System.out.printf(Locale.ROOT, "%-52s %.2f ms of CPU (%.2f to %.2f)%n", what, rounds[ROUNDS / 2],
                rounds[0], rounds[ROUNDS - 1]);
    }

    private void offices() throws Exception {
        PrintRun run = run();
        for (int i = 0; i < WARM; i++) {
            print(run, run.generic());
        }
        OperatingSystemMXBean machine = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        ExecutorService threads = Executors.newFixedThreadPool(2);
        long wall = 0;
        long cpu = 0;
        StringBuilder memory = new StringBuilder();
        for (int from = 0; from < OFFICES; from += BATCH) {
            long start = System.nanoTime();
            long before = machine.getProcessCpuTime();
            List<Future<Integer>> done = new ArrayList<>();
            for (OfficePanel office : offices.subList(from, from + BATCH)) {
                done.add(threads.submit(() -> print(run, office).length));
            }
            for (Future<Integer> one : done) {
                one.get();
            }
            wall += System.nanoTime() - start;
            cpu += machine.getProcessCpuTime() - before;
            System.gc();
            memory.append(String.format(Locale.ROOT, " %.1f", ManagementFactory.getMemoryMXBean()
                    .getHeapMemoryUsage().getUsed() / 1e6));
        }
        threads.shutdown();
        long peak = ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == java.lang.management.MemoryType.HEAP)
                .mapToLong(pool -> ((MemoryPoolMXBean) pool).getPeakUsage().getUsed()).sum();
        System.out.printf(Locale.ROOT, "%d offices on 2 threads: %.2f s of wall time, %.2f s of CPU (%.2f of 2"
                + " processors)%nheap at most %.0f of %.0f MB; after collection, every %d offices:%s MB%n",
                OFFICES, wall / 1e9, cpu / 1e9, (double) cpu / wall, peak / 1e6,
                Runtime.getRuntime().maxMemory() / 1e6, BATCH, memory);
    }
}
