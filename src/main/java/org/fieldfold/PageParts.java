package org.fieldfold;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.kept.Key;
import org.fieldfold.output.OutputFolder;
import org.fieldfold.trace.KeptResults;
import org.fieldfold.trace.ResultReader;
import org.fieldfold.trace.ResultWriter;
import org.fieldfold.translation.TranslatedBase;

/**
 * What a build takes of the pages of the last one, language by language, where nothing that was read for it has
 * changed: whole files, and what was found out for parts of others.
 */
final class PageParts {
    private final EarlierPages earlier;
    private final Tongues bases;
    private final OutputFolder folder;
    private final Map<String, Tongue> tongues = new LinkedHashMap<>();

    /** The base in one language; its results are texts, of files their paths and hashes by turns. */
    private record Tongue(ContentBase said, KeptResults<List<String>> results, KeptResults<List<String>>.Round round) {
    }

    private static final KeptResults.Form<List<String>> TEXTS = new KeptResults.Form<>() {
        @Override
        public void write(List<String> texts, ResultWriter out) {
            out.number(texts.size());
            texts.forEach(out::text);
        }

        @Override
        public Optional<List<String>> read(ResultReader in) {
            List<String> texts = new ArrayList<>();
            for (int left = in.count(); left > 0; left--) {
                texts.add(in.text());
            }
            return Optional.of(texts);
        }
    };

    /** @param folder follows the last build */
    PageParts(EarlierPages earlier, Tongues bases, OutputFolder folder) {
        this.earlier = earlier;
        this.bases = bases;
        this.folder = folder;
    }

    /**
     * Texts that are made of the base in a language and of nothing else that may change.
     *
     * @param name that no others of this language have
     */
    List<String> texts(String name, String language, Function<ContentBase, List<String>> make) {
        return in(language).round().take(name, "", make);
    }

    /**
     * Writes files that are made of the base in a language, or has those of the last build stay.
     *
     * @param name that no others of this language have
     * @param of what they are made of besides the base
     * @param make makes them, by path
     */
    void files(String name, String of, String language, Function<ContentBase, Map<String, byte[]>> make) {
        Tongue tongue = in(language);
        Map<String, byte[]> made = new LinkedHashMap<>();
        List<String> known = tongue.round().take(name, of, read -> {
            made.putAll(make.apply(read));
            List<String> written = new ArrayList<>();
            made.forEach((path, bytes) -> Collections.addAll(written, path, write(path, bytes)));
            return written;
        });
        if (!made.isEmpty()) {
            return;
        }
        List<String> gone = new ArrayList<>();
        for (int i = 0; i < known.size(); i += 2) {
            if (!folder.stays(known.get(i), known.get(i + 1))) {
                gone.add(known.get(i));
            }
        }
        if (!gone.isEmpty()) {
            Map<String, byte[]> again = make.apply(tongue.said());
            gone.forEach(path -> write(path, again.get(path)));
        }
    }

    private String write(String path, byte[] bytes) {
        try {
            return folder.put(path, Optional.empty(), () -> bytes).sha256();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** The base itself is one, whatever it is asked for as. */
    private Tongue in(String language) {
        ContentBase base = bases.base();
        ContentBase said = bases.in(language);
        return tongues.computeIfAbsent(said == base ? "" : language, name -> {
            KeptResults<List<String>> results = new KeptResults<>();
            earlier.kept().left(key(name)).ifPresent(bytes -> results.goOn(bytes, TEXTS));
            return new Tongue(said, results, said == base ? results.round(base, earlier.hashes())
                    : results.round(said, base, language, TranslatedBase::file, earlier.hashes()));
        });
    }

    /** Leaves what is known now to later builds. */
    void leave() {
        tongues.forEach((name, tongue) -> {
            boolean isAsBefore = tongue.round().isAsBefore();
            tongue.round().end();
            if (earlier.kept().isKeeping() && !isAsBefore) {
                earlier.kept().leave(key(name), tongue.results().bytes(TEXTS));
            }
        });
    }

    private Optional<Key> key(String language) {
        return EarlierBuilds.key("parts " + language, earlier.content(), earlier.kept());
    }
}
