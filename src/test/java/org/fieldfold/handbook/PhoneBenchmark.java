package org.fieldfold.handbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Names;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;

/**
 * How long the one file takes on a telephone four times slower than this machine, from its opening to the first
 * paint, to a search field that answers, and from a key to its answer: the shipped base, then one of ten times its
 * pests. Medians of five.
 */
final class PhoneBenchmark {
    /** Notes the moment at which the search field is there. */
    private static final String WATCH = "new MutationObserver(function(c,o){if(document.getElementById('find')){"
            + "window.ready=performance.now();o.disconnect()}}).observe(document,{childList:true,subtree:true})";
    private static final String ASK = """
            const field = document.getElementById('find');
            return arguments[0].map(words => {
                field.value = words;
                const before = performance.now();
                field.dispatchEvent(new Event('input'));
                return performance.now() - before;
            });
            """;

    private PhoneBenchmark() {
    }

    public static void main(String[] args) throws IOException {
        Path folder = Files.createTempDirectory("fieldfold-bench");
        try (Phone phone = Phone.open()) {
            phone.tell("Page.addScriptToEvaluateOnNewDocument", Map.of("source", WATCH));
            phone.tell("Emulation.setCPUThrottlingRate", Map.of("rate", 4));
            for (int times : new int[] {1, 10}) {
                Path file = folder.resolve("handbook-" + times + ".html");
                Files.write(file, Handbook.write(repeated(Shipped.BASE, times), Shipped.PHRASES, false).get(0).bytes());
                measure(phone, file, times * Shipped.BASE.pests().size());
            }
        }
    }

    private static void measure(Phone phone, Path file, int pests) throws IOException {
        double[][] all = new double[5][];
        for (int i = 0; i < all.length; i++) {
            phone.go(file, "");
            double ready = ((Number) phone.run("return window.ready")).doubleValue();
            double paint = ((Number) phone.run("return performance.getEntriesByName('first-contentful-paint')"
                    + ".map(e=>e.startTime)[0]||-1")).doubleValue();
            List<?> keys = (List<?>) phone.run(ASK, List.of("c", "co", "holes", "colorado po", "cabbage holes", "zz"));
            double first = ((Number) keys.get(0)).doubleValue();
            double worst = keys.stream().skip(1).mapToDouble(key -> ((Number) key).doubleValue()).max().orElseThrow();
            all[i] = new double[] {paint, ready, first, worst};
        }
        System.out.printf(Locale.ROOT, "%d pests, %,d bytes: first paint %.0f ms, search there %.0f ms, first key %.0f "
                + "ms (it opens the index), slowest later key %.0f ms%n", pests, Files.size(file), median(all, 0),
                median(all, 1), median(all, 2), median(all, 3));
    }

    private static double median(double[][] all, int column) {
        return java.util.Arrays.stream(all).mapToDouble(row -> row[column]).sorted().skip(all.length / 2).findFirst()
                .orElseThrow();
    }

    private static ContentBase repeated(ContentBase base, int times) {
        var pests = new TreeMap<String, Placed<PestEntry>>();
        base.pests().forEach((id, placed) -> {
            for (int i = 1; i <= times; i++) {
                String copy = i == 1 ? id : id + "-" + i;
                pests.put(copy, new Placed<>(copy(base, placed.value(), copy, i), placed.spans()));
            }
        });
        return new ContentBase(base.edition(), base.crops(), base.materials(), base.sources(), base.prices(), pests,
                base.enemies(), base.practices(), base.guides(), base.offices(), base.figures(), base.chapters(),
                base.stations(), base.schemes(), base.unread(), base.translations());
    }

    private static PestEntry copy(ContentBase base, PestEntry pest, String id, int number) {
        Names names = pest.names();
        Names own = number == 1 ? names : new Names(names.common() + " " + number, names.scientific(), names.family(),
                names.kind(), names.local());
        List<String> figures = base.figuresOf(pest.id(), pest.figures(), pest.stages()).stream()
                .map(figure -> figure.id()).toList();
        return new PestEntry(id, own, pest.crops(), figures, pest.stages(), pest.lookAlikes(), pest.damage(),
                pest.year(), pest.overwinters(), pest.monitoring(), pest.thresholds(), pest.controls(),
                pest.rotation(), pest.spare(), pest.cautions(), pest.sources(), pest.revised(), pest.reviser(),
                pest.carriedOver(), pest.signedFacts(), pest.signedWith());
    }
}
