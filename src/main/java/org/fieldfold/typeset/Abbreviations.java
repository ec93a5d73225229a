package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.prose.Run;

/**
 * Abbreviations of a language and what they stand for, which is said in their tags (ISO 32000-1, 14.9.5).
 */
record Abbreviations(String language, Map<String, String> expansions, Optional<Pattern> pattern) {
    static final Abbreviations NONE = new Abbreviations("", Map.of(), Optional.empty());
    /** Of languages that are spoken: few, and the same as long as the program runs. */
    private static final Map<String, Abbreviations> KNOWN = new ConcurrentHashMap<>();

    static Abbreviations in(String language) {
        Abbreviations known = KNOWN.get(language);
        return known != null ? known
                : Phrases.speaks(language) ? KNOWN.computeIfAbsent(language, Abbreviations::of) : NONE;
    }

    private static Abbreviations of(String language) {
        Map<String, String> expansions = new TreeMap<>(Phrases.in(language).expansions());
        return new Abbreviations(language, expansions, expansions.isEmpty() ? Optional.empty()
                : Optional.of(Pattern.compile(expansions.keySet().stream().map(Pattern::quote)
                        .collect(Collectors.joining("|", "(?<![\\p{L}\\p{N}])(?:", ")(?![\\p{L}\\p{N}])")))));
    }

    /** The same text, each abbreviation a run of its own. */
    List<Run> apart(List<Run> runs) {
        if (pattern.isEmpty() || runs.stream().noneMatch(run -> pattern.get().matcher(run.text()).find())) {
            return runs;
        }
        List<Run> apart = new ArrayList<>();
        for (Run run : runs) {
            Matcher found = pattern.get().matcher(run.text());
            int from = 0;
            while (found.find()) {
                add(run, from, found.start(), apart);
                add(run, found.start(), found.end(), apart);
                from = found.end();
            }
            add(run, from, run.text().length(), apart);
        }
        return List.copyOf(apart);
    }

    private static void add(Run run, int from, int to, List<Run> apart) {
        if (from < to) {
            apart.add(new Run(run.text().substring(from, to), run.style(), run.link(),
                    run.language()));
        }
    }

    /** What a run stands for, if it is an abbreviation and nothing else. */
    Optional<String> expansion(Run run) {
        return Optional.ofNullable(expansions.get(run.text()));
    }
}
