package org.fieldfold.region;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Pest entries and the guides over them, each a variation of one of the demo base: other ids and names, sizes a
 * little larger, another day of revision. They come in rounds; in a round every entry of the demo base comes at
 * most once, and entries of one round name only each other as look-alikes.
 */
final class RegionEntries {
    private static final Pattern SIZE = Pattern.compile("size: \\{from: ([0-9.]+), to: ([0-9.]+)\\}");

    private final SortedMap<String, String> demo;
    private final InventedNames names;
    private final Random chance;
    private final List<String> guides;
    private final List<String> pests;
    private final List<Map<String, String>> rounds = new ArrayList<>();
    private final Map<String, String> commonNames = new LinkedHashMap<>();

    /** @param demo texts of the demo base, by path */
    RegionEntries(SortedMap<String, String> demo, InventedNames names, Random chance, int entries) {
        this.demo = demo;
        this.names = names;
        this.chance = chance;
        this.guides = ids("guides/");
        Set<String> inOrderOfGuides = new LinkedHashSet<>();
        guides.forEach(guide -> inOrderOfGuides.addAll(listed(guide)));
        inOrderOfGuides.addAll(ids("pests/"));
        this.pests = List.copyOf(inOrderOfGuides);
        for (int left = entries; left > 0; left -= pests.size()) {
            Map<String, String> round = new LinkedHashMap<>();
            pests.subList(0, Math.min(left, pests.size())).forEach(pest -> {
                String name = common(pest);
                round.put(pest, name.replace(' ', '-'));
                commonNames.put(round.get(pest), name);
            });
            rounds.add(round);
        }
    }

    private String common(String pest) {
        String was = Rewriting.valueOf(demo.get("pests/" + pest + ".yaml"), "  common:");
        int last = was.lastIndexOf(' ');
        return names.word(was.substring(0, Math.max(0, last))) + was.substring(last);
    }

    private List<String> ids(String folder) {
        return demo.keySet().stream().filter(path -> path.startsWith(folder) && path.endsWith(".yaml"))
                .map(path -> path.substring(folder.length(), path.length() - ".yaml".length())).toList();
    }

    private List<String> listed(String guide) {
        return List.of(Rewriting.valueOf(demo.get("guides/" + guide + ".yaml"), "entries:")
                .replaceAll("[\\[\\]]", "").split(", *"));
    }

    /** A file that is not about one entry, with the entries of the first round where it names some. */
    String shared(String text) {
        Set<String> gone = without(0);
        return Rewriting.rename(Rewriting.withoutListed(Rewriting.withoutLookAlikes(text, gone), gone),
                rounds.get(0));
    }

    /** Whether an entry of the demo base has a variation in the first round. */
    boolean has(String pest) {
        return rounds.get(0).containsKey(pest);
    }

    private Set<String> without(int round) {
        Set<String> gone = new TreeSet<>(pests);
        gone.removeAll(rounds.get(round).keySet());
        return gone;
    }

    /** Adds the files of all entries and their translations. */
    void write(RegionGenerator.Sink sink) {
        for (int round = 0; round < rounds.size(); round++) {
            for (String pest : rounds.get(round).keySet()) {
                entry(pest, round, sink);
            }
        }
    }

    private void entry(String pest, int round, RegionGenerator.Sink sink) {
        Map<String, String> ids = rounds.get(round);
        Set<String> gone = without(round);
        if (round > 0) {
            gone.addAll(ids("natural-enemies/"));
        }
        String id = ids.get(pest);
        String name = commonNames.get(id);
        String first = name.substring(0, name.indexOf(' '));
        String text = demo.get("pests/" + pest + ".yaml");
        String genus = Rewriting.valueOf(text, "  scientific:").split(" ")[0];
        text = text.replaceFirst("(?m)^  common: .*$", "  common: " + name)
                .replaceFirst("(?m)^  scientific: .*$", "  scientific: " + genus + " " + first + "is")
                .replaceFirst("(?m)^  local: .*\\n", "")
                .replaceFirst("(?m)^revised: .*$", "revised: " + LocalDate.of(2026, 10, 1)
                        .plusDays(chance.nextInt(50)));
        if (round > 0 && !text.contains("\nfigures:")) {
            text = text.replaceFirst("(?m)^crops:", figures(pest) + "crops:");
        }
        text = Rewriting.withoutLookAlikes(larger(text), gone);
        sink.text("pests/" + id + ".yaml", Rewriting.rename(text, ids));
        String said = demo.get("es/pests/" + pest + ".yaml");
        String kind = Rewriting.valueOf(said.substring(said.indexOf("names/common:")), "  text:").split(" ")[0];
        said = Rewriting.unsaid(Rewriting.say(said, "names/common", name, kind + " " + first), "names/local");
        sink.text("es/pests/" + id + ".yaml", Rewriting.rename(Rewriting.withoutLookAlikes(said, gone), ids));
    }

    /** Entries of later rounds show the drawings of the first. */
    private String figures(String pest) {
        List<String> shown = ids("figures/").stream().filter(figure -> demo.get("figures/" + figure + ".yaml")
                .contains("entry: " + pest + ",")).toList();
        return shown.isEmpty() ? "" : "figures: [" + String.join(", ", shown) + "]\n";
    }

    /** All sizes by the same part, up to a tenth. */
    private String larger(String text) {
        double times = 1 + chance.nextInt(11) / 100.0;
        return SIZE.matcher(text).replaceAll(size -> Matcher.quoteReplacement("size: {from: " + tenths(size.group(1),
                times) + ", to: " + tenths(size.group(2), times) + "}"));
    }

    private static String tenths(String millimetres, double times) {
        return BigDecimal.valueOf(Double.parseDouble(millimetres) * times).setScale(1, RoundingMode.HALF_UP)
                .toPlainString();
    }

    /** Adds guides: those of the demo base one after the other, over one round of entries after the other. */
    void guides(int count, RegionGenerator.Sink sink) {
        int made = 0;
        for (int number = 0; made < count; number++) {
            String guide = guides.get(number % guides.size());
            int turn = number / guides.size();
            int round = number % rounds.size();
            Set<String> gone = without(round);
            if (gone.containsAll(listed(guide))) {
                continue;
            }
            String text = demo.get("guides/" + guide + ".yaml");
            String said = demo.get("es/guides/" + guide + ".yaml");
            String id = guide + (turn == 0 ? "" : "-" + (turn + 1));
            if (turn > 0) {
                String title = Rewriting.valueOf(text, "title:") + " " + (turn + 1);
                text = text.replaceFirst("(?m)^title: .*$", "title: " + title);
                String was = Rewriting.valueOf(said.substring(said.indexOf("title:")), "  text:");
                said = Rewriting.say(said, "title", title, was + " " + (turn + 1));
            }
            sink.text("guides/" + id + ".yaml",
                    Rewriting.rename(Rewriting.withoutListed(text, gone), rounds.get(round)));
            sink.text("es/guides/" + id + ".yaml", said);
            made++;
        }
    }
}
