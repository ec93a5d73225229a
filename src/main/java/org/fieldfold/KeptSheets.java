package org.fieldfold;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fieldfold.content.InputFile;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.kept.Kept;
import org.fieldfold.kept.Key;
import org.fieldfold.source.SourceFile;
import org.fieldfold.trace.KeptResults;
import org.fieldfold.trace.Sources;
import org.fieldfold.translation.TranslatedBase;

/**
 * What is known of sheets from build to build, language by language: it is found out again only where something
 * that was read for it has changed.
 */
final class KeptSheets {
    private final Path content;
    private final Map<String, String> hashes;
    private final Kept kept;
    private final Map<String, Tongue> tongues = new LinkedHashMap<>();

    /** Of one language. */
    private record Tongue(KeptResults<List<SheetFacts>> results, KeptResults<List<SheetFacts>>.Round round) {
    }

    /** @param inputs the files that the base was read from */
    KeptSheets(Path content, List<InputFile> inputs, Kept kept) {
        this.content = content;
        this.hashes = inputs.stream().collect(Collectors.toMap(InputFile::path, InputFile::sha256));
        this.kept = kept;
    }

    /** Begins with a language. */
    KeptResults<List<SheetFacts>>.Round in(String language, Tongues bases) {
        ContentBase base = bases.base();
        KeptResults<List<SheetFacts>> results = new KeptResults<>();
        Map<String, SourceFile> files = Sources.of(base);
        kept.left(key(language)).ifPresent(bytes -> results.goOn(bytes, new SheetForm(files)));
        Tongue tongue = new Tongue(results, bases.in(language) == base ? results.round(base, hashes)
                : results.round(bases.in(language), base, language, TranslatedBase::file, hashes));
        tongues.put(language, tongue);
        return tongue.round();
    }

    /** Leaves what is known now to later builds. */
    void leave() {
        tongues.forEach((language, tongue) -> {
            boolean isAsBefore = tongue.round().isAsBefore();
            tongue.round().end();
            if (kept.isKeeping() && !isAsBefore) {
                kept.leave(key(language), tongue.results().bytes(new SheetForm(Map.of())));
            }
        });
    }

    /** The batches that were made, and not known before, each behind its language. */
    List<String> made() {
        return tongues.entrySet().stream().flatMap(tongue -> tongue.getValue().round().made().stream().map(batch ->
                tongue.getKey() + " " + batch)).toList();
    }

    private Optional<Key> key(String language) {
        return kept.key("sheets", language, content.toAbsolutePath().normalize().toString());
    }
}
