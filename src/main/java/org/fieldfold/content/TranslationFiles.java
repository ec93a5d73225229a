package org.fieldfold.content;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.fieldfold.entry.Translation;

/** Puts what was read in the folders of languages together, language by language. */
record TranslationFiles(List<FileReading> readings) {
    /** What a glossary file becomes. */
    record Glossary(List<Translation.Term> terms) {
    }

    static boolean isGlossary(String id) {
        return id.substring(id.indexOf('/') + 1).equals("glossary");
    }

    SortedMap<String, Translation> byLanguage() {
        SortedMap<String, SortedMap<String, Translation.Page>> pages = new TreeMap<>();
        SortedMap<String, List<Translation.Term>> terms = new TreeMap<>();
        for (FileReading reading : readings) {
            if (reading.file().kind() != FileKind.TRANSLATION) {
                continue;
            }
            int slash = reading.file().id().indexOf('/');
            String language = reading.file().id().substring(0, slash);
            SortedMap<String, Translation.Page> files =
                    pages.computeIfAbsent(language, first -> new TreeMap<>());
            reading.records().values().forEach(read -> {
                if (read.value() instanceof Glossary glossary) {
                    terms.computeIfAbsent(language, first -> new ArrayList<>()).addAll(glossary.terms());
                } else if (read.value() instanceof Translation.Page page) {
                    files.put(reading.file().id().substring(slash + 1), page);
                }
            });
        }
        SortedMap<String, Translation> translations = new TreeMap<>();
        pages.forEach((language, files) -> translations.put(language, new Translation(language,
                terms.getOrDefault(language, List.of()), Collections.unmodifiableSortedMap(files))));
        return Collections.unmodifiableSortedMap(translations);
    }
}
