package org.fieldfold.content;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Station;
import org.fieldfold.entry.Translation;
import org.fieldfold.report.Sha256;
import org.fieldfold.scouting.degreeday.TemperatureRecord;
import org.fieldfold.scouting.degreeday.TemperatureUnit;
import org.fieldfold.source.Finding;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;
import org.fieldfold.source.Spans;

/**
 * What came of reading one file. Files are read independently of each other, so that it may be done at the
 * same time.
 *
 * @param bytes of an image; empty for others
 * @param records by id: one, or those of a list file
 * @param unread records that were found but not understood
 */
record FileReading(ContentFile file, InputFile input, SourceFile source, byte[] bytes,
        Map<String, Placed<Object>> records, Map<String, Span> unread, List<TextReading.EntryLink> links,
        List<Finding> findings) {
    private static final int CHARACTERS_OF_DAYS = 45;

    static FileReading read(ContentFile file) {
        return read(file, FileReading::of);
    }

    /** @param understand makes a reading of a file's bytes */
    static FileReading read(ContentFile file, BiFunction<ContentFile, byte[], FileReading> understand) {
        byte[] bytes;
        int limit = file.kind().limit().bytes();
        try {
            long size = Files.size(file.file());
            if (size > limit) {
                return tooLarge(file, String.valueOf((size + (1 << 20) - 1) >> 20) + " MiB");
            }
            try (InputStream in = Files.newInputStream(file.file())) {
                bytes = in.readNBytes(limit + 1);
            }
        } catch (IOException e) {
            return unreadable(file, FormRule.UNREADABLE_FILE.at(start(file),
                    "expected a file that can be read, found none: "
                    + e.getClass().getSimpleName(), "look at the file's permissions"));
        }
        return held(file, bytes, understand);
    }

    /** The same, of bytes that are already there, unless they are more than a file may hold. */
    static FileReading held(ContentFile file, byte[] bytes, BiFunction<ContentFile, byte[], FileReading> understand) {
        return bytes.length > file.kind().limit().bytes() ? tooLarge(file, "more") : understand.apply(file, bytes);
    }

    /** Known before anything is read; or, of a file that grew meanwhile, behind its limit. */
    private static FileReading tooLarge(ContentFile file, String found) {
        return unreadable(file, FormRule.FILE_TOO_LARGE.at(start(file), "expected at most "
                + file.kind().limit().mebibytes() + " MiB, found " + found, file.kind().isImage()
                ? "save the image smaller" : "split the file"));
    }

    /** What is understood of bytes. */
    static FileReading of(ContentFile file, byte[] bytes) {
        return of(file, bytes, Sha256.of(bytes));
    }

    /** @param sha256 of these bytes */
    static FileReading of(ContentFile file, byte[] bytes, String sha256) {
        List<Finding> findings = new FewFindings();
        SourceFile source = source(file, bytes, findings);
        UnseenCharacters.report(source, findings);
        FileReading reading = new FileReading(file, input(file, bytes, sha256), source, image(file, bytes),
                new TreeMap<>(), new TreeMap<>(), new ArrayList<>(), findings);
        reading.understand();
        return reading;
    }

    static InputFile input(ContentFile file, byte[] bytes, String sha256) {
        return new InputFile(file.path(), bytes.length, sha256);
    }

    /** The text of a file, none of a photograph; bytes that are no text become findings. */
    static SourceFile source(ContentFile file, byte[] bytes, List<Finding> findings) {
        return file.kind().isImage() && file.kind() != FileKind.DRAWING ? new SourceFile(file.path(), "")
                : Decoding.decode(file.path(), bytes, findings);
    }

    /** The bytes that are kept with a reading: those of an image. */
    static byte[] image(ContentFile file, byte[] bytes) {
        return file.kind().isImage() ? bytes : new byte[0];
    }

    /** The same with no more than so many findings, and without an image that cannot be used. */
    FileReading first(int most) {
        byte[] held = unread.isEmpty() ? bytes : new byte[0];
        if (findings.size() <= most && held == bytes) {
            return this;
        }
        List<Finding> few = new FewFindings(most);
        few.addAll(findings);
        return new FileReading(file, input, source, held, records, unread, links, few);
    }

    /** How many values it holds that take memory each. */
    long values() {
        // a day of weather takes a third of what a value does
        return file.kind() == FileKind.WEATHER ? source.text().length() / CHARACTERS_OF_DAYS
                : records.values().stream().mapToLong(placed -> placed.spans().byPath().size()
                + (placed.value() instanceof Translation.Page page ? page.passages().size() : 0)).sum();
    }

    /** The same file, not read after all. */
    FileReading refused(FormRule rule, String message, String hint) {
        return unreadable(file, rule.at(start(file), message, hint));
    }

    private static FileReading unreadable(ContentFile file, Finding finding) {
        SourceFile source = new SourceFile(file.path(), "");
        return new FileReading(file, new InputFile(file.path(), 0, Sha256.of(new byte[0])), source, new byte[0],
                Map.of(), Map.of(file.id(), Span.startOf(source)), List.of(), List.of(finding));
    }

    private static Span start(ContentFile file) {
        return Span.startOf(new SourceFile(file.path(), ""));
    }

    private void understand() {
        boolean decoded = findings.isEmpty();
        if (source.text().isBlank() && (file.kind().isYaml() || file.kind() == FileKind.CHAPTER
                || file.kind() == FileKind.SCHEME)) {
            empty();
        } else if (file.kind().isYaml()) {
            yaml(decoded);
        } else {
            switch (file.kind()) {
                case CHAPTER -> chapter(decoded);
                case SCHEME -> scheme(decoded);
                case TRANSLATION -> translation(decoded);
                case WEATHER -> weather();
                case DRAWING -> image(DrawingReading.check(source));
                case PHOTOGRAPH, RASTER -> image(raster());
                default -> { }
            }
        }
    }

    /** A station with slips in its rows is not used: what would be left of it says something else. */
    private void weather() {
        WeatherRows rows = new WeatherRows(source);
        findings.addAll(rows.findings());
        if (!rows.findings().isEmpty()) {
            unread.put(file.id(), Span.startOf(source));
            return;
        }
        TemperatureRecord days = new TemperatureRecord(TemperatureUnit.CELSIUS, rows.days());
        records.put(file.id(), new Placed<>(new Station(file.id(), days), new Spans(source, Map.of())));
    }

    private void chapter(boolean decoded) {
        TextReading texts = new TextReading();
        ChapterReading chapter = ChapterReading.read(source, file.id(), texts, findings);
        links.addAll(texts.links());
        chapter.chapter().filter(read -> decoded).ifPresentOrElse(
                read -> records.put(file.id(), new Placed<>(read, new Spans(source, chapter.places()))),
                () -> unread.put(file.id(), Span.startOf(source)));
    }

    private void scheme(boolean decoded) {
        SchemeReading.read(source, file.id(), findings).filter(read -> decoded).ifPresentOrElse(
                read -> records.put(file.id(), new Placed<>(read, new Spans(source, Map.of()))),
                () -> unread.put(file.id(), Span.startOf(source)));
    }

    private void translation(boolean decoded) {
        if (decoded && !source.text().isBlank()) {
            TranslationReading translation = new TranslationReading(source, findings);
            records.put(file.id(), new Placed<>(TranslationFiles.isGlossary(file.id())
                    ? translation.glossary() : translation.page(), new Spans(source, Map.of())));
            links.addAll(translation.links());
        }
    }

    private void image(List<Finding> slips) {
        findings.addAll(slips);
        if (!findings.isEmpty()) {
            unread.put(file.id(), Span.startOf(source));
        }
    }

    private List<Finding> raster() {
        Optional<RasterHeader> header = RasterHeader.of(bytes);
        if (header.isEmpty()) {
            return List.of(FormRule.NOT_AN_IMAGE.at(Span.startOf(source),
                    "expected a PNG or JPEG image, found other bytes",
                    "save the image again from the program that made it"));
        }
        if (!header.get().isHandy()) {
            return List.of(FormRule.NOT_AN_IMAGE.at(Span.startOf(source),
                    "expected an image of at most 40 million pixels, found " + header.get().width() + " by "
                            + header.get().height(),
                    "save it smaller; 300 dots per inch at its printed size are enough"));
        }
        boolean png = file.kind() == FileKind.RASTER;
        Optional<String> problem = RasterHeader.isPng(bytes) != png ? Optional.of("one of the other kind")
                : png ? PngCheck.problem(bytes) : JpegCheck.problem(bytes);
        return problem.map(what -> List.of(FormRule.NOT_AN_IMAGE.at(Span.startOf(source), "expected one whole still "
                + (png ? "PNG" : "JPEG") + " image of 8 bits a colour, found " + what,
                "save it again as " + (png ? "PNG" : "JPEG") + ", in grey or RGB, not for a press")))
                .orElse(List.of());
    }

    private void empty() {
        findings.add(FormRule.EMPTY_FILE.at(Span.startOf(source), "expected a " + file.kind().schema()
                .replace('-', ' ')
                + " file with something in it, found none", "fill the file, or delete it"));
        unread.put(file.id(), Span.startOf(source));
    }

    private void yaml(boolean decoded) {
        YamlReading reading = YamlReading.read(source, findings);
        boolean sound = decoded && findings.isEmpty();
        if (reading.root().isEmpty()) {
            if (sound) {
                empty();
            }
            unread.put(file.id(), Span.startOf(source));
            return;
        }
        YamlNode root = reading.root().get();
        Optional<String> listKey = file.kind().listKey();
        if (listKey.isEmpty()) {
            record(reading, root, Optional.of(file.id()), file.id(), sound);
        } else {
            list(reading, root, listKey.get(), List.copyOf(findings));
        }
    }

    private void record(YamlReading reading, YamlNode node, Optional<String> idFromName, String id,
            boolean sound) {
        Binder binder = new Binder(reading, idFromName, findings);
        Optional<Object> value = binder.bind(node, file.kind().shape(), "");
        links.addAll(binder.links());
        boolean whole = sound && !binder.broken();
        // the edition is used even with a slip in it: without it nothing else could be checked
        if (value.isPresent() && (whole || file.kind() == FileKind.EDITION)) {
            records.put(id, new Placed<>(value.get(), new Spans(source, binder.places())));
        } else {
            unread.put(id, node.span());
        }
    }

    /** @param slips of the file as a whole: each breaks the item in which it lies, and no other */
    private void list(YamlReading reading, YamlNode root, String key, List<Finding> slips) {
        List<YamlNode> items = new ListFile(key, reading, findings).items(root);
        for (YamlNode item : items) {
            Optional<YamlNode.Scalar> id = Binder.idOf(item);
            String name = id.map(YamlNode.Scalar::value).orElse("");
            if (records.containsKey(name) || unread.containsKey(name)) {
                findings.add(FormRule.COLLIDING_ID.at(id.map(YamlNode.Scalar::span).orElse(item.span()),
                        "expected ids that differ in this file, found '" + name + "' again",
                        "give one of the two another id"));
            } else {
                boolean sound = slips.stream().noneMatch(slip -> slip.span().start() >= item.span().start()
                        && slip.span().start() <= item.span().end());
                record(reading, item, Optional.empty(), name, sound);
            }
        }
    }
}
