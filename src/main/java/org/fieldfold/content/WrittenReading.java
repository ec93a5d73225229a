package org.fieldfold.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Severity;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;
import org.fieldfold.source.Spans;

/**
 * What came of reading one file, as bytes that a later process reads instead of the file. The file's own
 * bytes are not among them: they are at hand whenever their hash is known.
 *
 * @param sha256 of the file
 * @param bytes in which the reading stands, with others
 * @param from where it begins
 * @param length how long it is
 */
record WrittenReading(String sha256, byte[] bytes, int from, int length) {
    /** The reading as bytes; empty when something in it has no form in them. */
    static Optional<WrittenReading> of(FileReading reading) {
        TreeWriter out = new TreeWriter(reading.source());
        try {
            out.number(reading.records().size());
            for (Map.Entry<String, Placed<Object>> record : reading.records().entrySet()) {
                out.text(record.getKey());
                out.value(record.getValue().value());
                places(record.getValue().spans().byPath(), out);
            }
            places(reading.unread(), out);
            out.number(reading.links().size());
            for (TextReading.EntryLink link : reading.links()) {
                out.text(link.entry());
                out.place(link.place());
            }
            out.number(reading.findings().size());
            for (Finding finding : reading.findings()) {
                out.number(finding.severity().ordinal());
                out.place(finding.span());
                out.text(finding.rule());
                out.text(finding.message());
                out.text(finding.hint());
            }
        } catch (TreeWriter.Formless unkept) {
            return Optional.empty();
        }
        byte[] bytes = out.bytes();
        return Optional.of(new WrittenReading(reading.input().sha256(), bytes, 0, bytes.length));
    }

    private static void places(Map<String, Span> places, TreeWriter out) throws TreeWriter.Formless {
        out.number(places.size());
        for (Map.Entry<String, Span> place : places.entrySet()) {
            out.text(place.getKey());
            out.place(place.getValue());
        }
    }

    /**
     * The same reading again.
     *
     * @param input with the same hash
     * @param image the file's bytes, when it is an image
     * @return empty when the bytes are not what this program writes
     */
    Optional<FileReading> read(ContentFile file, InputFile input, SourceFile source, byte[] image) {
        try {
            TreeReader in = new TreeReader(source, bytes, from, length);
            Map<String, Placed<Object>> records = new TreeMap<>();
            for (int left = in.number(); left > 0; left--) {
                records.put(in.text(), new Placed<>(in.value(), new Spans(source, places(in))));
            }
            Map<String, Span> unread = new TreeMap<>(places(in));
            List<TextReading.EntryLink> links = new ArrayList<>();
            for (int left = in.number(); left > 0; left--) {
                links.add(new TextReading.EntryLink(in.text(), in.place()));
            }
            List<Finding> findings = new ArrayList<>();
            for (int left = in.number(); left > 0; left--) {
                findings.add(new Finding(Severity.values()[in.number()], in.place(), in.text(), in.text(),
                        in.text()));
            }
            return in.isAtEnd() ? Optional.of(new FileReading(file, input, source, image, records, unread, links,
                    findings)) : Optional.empty();
        } catch (RuntimeException | StackOverflowError otherBytes) {
            return Optional.empty();
        }
    }

    private static Map<String, Span> places(TreeReader in) {
        Map<String, Span> places = new HashMap<>();
        for (int left = in.number(); left > 0; left--) {
            places.put(SharedPaths.of(in.text()), in.place());
        }
        return places;
    }
}
