package org.fieldfold.trace;

import java.lang.reflect.RecordComponent;
import java.util.HashMap;
import java.util.Map;
import java.util.SortedMap;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Keys;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;

/** The files in which the records of a base stand. */
public final class Sources {
    private Sources() {
    }

    /** By path. */
    public static Map<String, SourceFile> of(ContentBase base) {
        Map<String, SourceFile> files = new HashMap<>();
        add(base.edition().spans().file(), files);
        for (RecordComponent component : Keys.components(base)) {
            if (Keys.value(base, component) instanceof SortedMap<?, ?> records) {
                records.values().forEach(record -> {
                    if (record instanceof Placed<?> placed) {
                        add(placed.spans().file(), files);
                    } else if (record instanceof Span unread) {
                        add(unread.file(), files);
                    }
                });
            }
        }
        base.translations().values().forEach(translation -> {
            translation.files().values().forEach(page -> add(page.start().file(), files));
            translation.glossary().forEach(term -> add(term.place().file(), files));
        });
        return files;
    }

    private static void add(SourceFile file, Map<String, SourceFile> files) {
        files.put(file.path(), file);
    }
}
