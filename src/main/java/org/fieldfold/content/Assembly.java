package org.fieldfold.content;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.fieldfold.entry.ActiveIngredient;
import org.fieldfold.entry.Chapter;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Crop;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.FigureNote;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.NaturalEnemy;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Practice;
import org.fieldfold.entry.Price;
import org.fieldfold.entry.Source;
import org.fieldfold.entry.Station;
import org.fieldfold.fold.FoldScheme;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Span;

/** Puts the readings of all files together into one content base. */
final class Assembly {
    private static final Set<FileKind> ENTRIES = Set.of(FileKind.PEST, FileKind.NATURAL_ENEMY,
            FileKind.PRACTICE);

    private final List<FileReading> readings;
    private final List<Finding> findings = new ArrayList<>();

    Assembly(List<FileReading> readings) {
        this.readings = readings;
    }

    List<Finding> findings() {
        return findings;
    }

    /** The ids of a kind, those of records that were found but not understood included. */
    Set<String> ids(FileKind kind) {
        Set<String> ids = new TreeSet<>();
        of(kind).forEach(reading -> {
            ids.addAll(reading.records().keySet());
            ids.addAll(reading.unread().keySet());
            if (!kind.isYaml()) {
                ids.add(reading.file().id());
            }
        });
        return ids;
    }

    /** Whether a list file could not be read at all, so that nobody knows which ids it has. */
    boolean isUnknown(FileKind kind) {
        return of(kind).stream().anyMatch(reading -> kind.listKey().isPresent()
                && reading.unread().containsKey(reading.file().id()));
    }

    /** The links in texts to entries. */
    List<TextReading.EntryLink> links() {
        return readings.stream().flatMap(reading -> reading.links().stream()).toList();
    }

    Optional<ContentBase> base() {
        SortedMap<String, Placed<Figure>> figures = figures();
        return records(FileKind.EDITION, Edition.class).values().stream().findFirst()
                .map(edition -> new ContentBase(edition,
                        records(FileKind.CROPS, Crop.class),
                        records(FileKind.ACTIVE_INGREDIENTS, ActiveIngredient.class),
                        records(FileKind.SOURCES, Source.class),
                        records(FileKind.PRICES, Price.class),
                        records(FileKind.PEST, PestEntry.class),
                        records(FileKind.NATURAL_ENEMY, NaturalEnemy.class),
                        records(FileKind.PRACTICE, Practice.class),
                        records(FileKind.GUIDE, Guide.class),
                        records(FileKind.OFFICE, Office.class),
                        figures,
                        records(FileKind.CHAPTER, Chapter.class),
                        records(FileKind.WEATHER, Station.class),
                        schemes(),
                        unread(), new TranslationFiles(readings).byLanguage()));
    }

    private List<FileReading> of(FileKind kind) {
        return readings.stream().filter(reading -> reading.file().kind() == kind).toList();
    }

    private <T> SortedMap<String, Placed<T>> records(FileKind kind, Class<T> type) {
        SortedMap<String, Placed<T>> records = new TreeMap<>();
        of(kind).forEach(reading -> reading.records().forEach((id, placed) ->
                records.put(id, new Placed<>(type.cast(placed.value()), placed.spans()))));
        return Collections.unmodifiableSortedMap(records);
    }

    private SortedMap<String, Optional<FoldScheme>> schemes() {
        SortedMap<String, Optional<FoldScheme>> schemes = new TreeMap<>();
        ids(FileKind.SCHEME).forEach(id -> schemes.put(id, Optional.empty()));
        records(FileKind.SCHEME, FoldScheme.class)
                .forEach((id, placed) -> schemes.put(id, Optional.of(placed.value())));
        return Collections.unmodifiableSortedMap(schemes);
    }

    private SortedMap<String, Span> unread() {
        SortedMap<String, Span> unread = new TreeMap<>();
        readings.stream().filter(reading -> ENTRIES.contains(reading.file().kind()))
                .forEach(reading -> reading.unread().forEach(unread::putIfAbsent));
        return Collections.unmodifiableSortedMap(unread);
    }

    /** A figure is an image with the note beside it; either alone is a finding. */
    private SortedMap<String, Placed<Figure>> figures() {
        SortedMap<String, Placed<Figure>> figures = new TreeMap<>();
        Map<String, Placed<FigureNote>> notes = records(FileKind.FIGURE, FigureNote.class);
        Set<String> noted = ids(FileKind.FIGURE);
        Set<String> shown = new TreeSet<>();
        readings.stream().filter(reading -> reading.file().kind().isImage()).forEach(image -> {
            String id = image.file().id();
            shown.add(id);
            Placed<FigureNote> note = notes.get(id);
            if (note != null && image.unread().isEmpty()) {
                figures.putIfAbsent(id, new Placed<>(
                        new Figure(id, note.value(), image.file().path(), image.bytes(),
                                image.input().sha256()), note.spans()));
            } else if (!noted.contains(id)) {
                findings.add(FormRule.FIGURE_WITHOUT_NOTE.at(Span.startOf(image.source()),
                        "expected the file " + id + ".yaml beside the image, found none",
                        "write its caption, what it shows, alternative text, credit, licence and true "
                                + "size there"));
            }
        });
        of(FileKind.FIGURE).stream().filter(note -> !shown.contains(note.file().id()))
                .forEach(note -> findings.add(FormRule.NOTE_WITHOUT_FIGURE.at(Span.startOf(note.source()),
                        "expected an image " + note.file().id()
                                + ".svg, .png or .jpg beside the note, found none",
                        "add the image, or delete the note")));
        return Collections.unmodifiableSortedMap(figures);
    }
}
