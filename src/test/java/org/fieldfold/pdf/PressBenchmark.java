package org.fieldfold.pdf;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.Optional;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Paper;
import org.fieldfold.typeset.SetGuide;

/**
 * How much CPU time a sheet takes to print, warm: two pages, twelve panels, about as much text as a pocket
 * guide holds. Run with {@code mvn -q test-compile exec:java
 * -Dexec.mainClass=org.fieldfold.pdf.PressBenchmark -Dexec.classpathScope=test}
 */
public final class PressBenchmark {
    private static final int WARM = 600;
    private static final int ROUNDS = 5;
    private static final int SHEETS = 200;

    private PressBenchmark() {}

    public static void main(String[] args) throws IOException {
        Map<String, byte[]> figures = new TreeMap<>();
        Path folder = Path.of("content/figures");
        if (Files.isDirectory(folder)) {
            try (var files = Files.newDirectoryStream(folder, "*.svg")) {
                for (Path file : files) {
                    figures.put(file.getFileName().toString().replace(".svg", ""), Files.readAllBytes(file));
                }
            }
        }
        figures.put("beetle", SampleGuide.BEETLE.getBytes(java.nio.charset.StandardCharsets.UTF_8));
        long start = cpu();
        Press press = Press.of(figures);
        Imposition imposition = SampleGuide.imposition("accordion-6", Paper.LETTER, FlipEdge.SHORT);
        SetGuide guide = SampleGuide.full(imposition, new TreeSet<>(figures.keySet()));
        PrintJob job = SampleGuide.job(imposition, guide, Optional.empty());
        press.freeze(job.characters());
        byte[] first = press.print(job);
        System.out.printf(Locale.ROOT, "first sheet, cold, with %d figures: %.0f ms, %d bytes%n",
                figures.size(), (cpu() - start) / 1e6, first.length);
        for (int i = 0; i < WARM; i++) {
            press.print(job);
        }
        for (int round = 0; round < ROUNDS; round++) {
            start = cpu();
            for (int i = 0; i < SHEETS; i++) {
                press.print(job);
            }
            System.out.printf(Locale.ROOT, "%.2f ms CPU a sheet%n", (cpu() - start) / 1e6 / SHEETS);
        }
    }

    private static long cpu() {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        return threads.getCurrentThreadCpuTime();
    }
}
