package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.fieldfold.source.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a reader cannot see, or sees as something else, is found wherever it stands and however it is written. */
class UnseenCharactersTest {
    /**
     * Controls of both blocks, marks and overrides of direction (UAX 9), characters of no width, a byte-order
     * mark, separators, a soft hyphen, an invisible letter, a selector, a tag, characters that are none.
     */
    private static final List<Integer> UNSEEN = List.of(0x00, 0x07, 0x1B, 0x7F, 0x85, 0x9B, 0x200E, 0x200F, 0x061C,
            0x202A, 0x202B, 0x202D, 0x202E, 0x2066, 0x2067, 0x2069, 0x200B, 0x200C, 0x200D, 0x2060, 0x2028, 0x2029,
            0xAD, 0x034F, 0x3164, 0xFE0F, 0xFEFF, 0xFFF9, 0xFDD0, 0xFFFE, 0xFFFF, 0x1FFFE, 0xE0041, 0x10FFFF);

    /** A sound file of each kind that holds text, with the place for a character marked. */
    private static final Map<FileKind, String> FILES = new TreeMap<>(Map.of(
            FileKind.PRACTICE, "name: Row @ cover\ntier: 2\nkind: row-cover\nsummary: Cover on hoops.\n",
            FileKind.CROPS, "crops:\n  - {id: pea, name: pea @ s, scientific: Pisum sativum, pollination: self, "
                    + "ink: \"#2a5a1a\"}\n",
            FileKind.FIGURE, "caption: adult @ beetle\nshows: {entry: mite, damage: false}\n",
            FileKind.TRANSLATION, "summary: {of: 0a1b2c3d4e5f, text: Cubra @ pronto.}\n",
            FileKind.CHAPTER, "# How to count\n\nWalk @ a V.\n",
            FileKind.DRAWING, "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"><title>A @ beetle"
                    + "</title><g/></svg>\n",
            FileKind.WEATHER, "date,min,max\n2026-05-01,4.5,17.2 @\n",
            FileKind.LEDGER, "{\"title\": \"a @ b\"}\n"));

    private static List<Finding> read(FileKind kind, String text) {
        return FileReading.of(new ContentFile("content/x", Path.of("x"), kind, "es/x"),
                text.getBytes(StandardCharsets.UTF_8)).findings();
    }

    private static String with(FileKind kind, String piece) {
        return FILES.get(kind).replace("@", piece);
    }

    @ParameterizedTest
    @EnumSource(names = {"PRACTICE", "CROPS", "FIGURE", "TRANSLATION", "CHAPTER", "DRAWING", "WEATHER", "LEDGER"})
    void inEveryKindOfFileAtItsPlace(FileKind kind) {
        List<Finding> sound = read(kind, with(kind, ""));
        assertFalse(sound.stream().anyMatch(finding -> finding.rule().equals("control-character")), sound.toString());
        for (int c : UNSEEN) {
            String text = with(kind, Character.toString(c));
            List<Finding> findings = read(kind, text);
            int at = FILES.get(kind).indexOf('@');
            assertTrue(findings.stream().anyMatch(finding -> finding.rule().equals("control-character")
                    && finding.severity() == org.fieldfold.source.Severity.ERROR
                    && finding.span().start() == at && finding.message().endsWith("U+%04X".formatted(c))),
                    () -> kind + " U+%04X: ".formatted(c) + findings);
        }
    }

    @Test
    void ordinarySignsStay() {
        String signs = "\u00bd \u00e9 e\u0301 \u2013 \u2019 \u00a0 \u2009 \u00b0 \u2642 \uD83D\uDC1B \u4e00 \u05d0 \t";
        for (FileKind kind : List.of(FileKind.CHAPTER, FileKind.DRAWING)) {
            assertEquals(List.of(), read(kind, with(kind, signs)));
        }
    }

    @Test
    void asEscapesInDoubleQuotes() {
        List<String> escapes = new ArrayList<>(List.of("\\0", "\\a", "\\b", "\\v", "\\f", "\\e", "\\N", "\\L", "\\P",
                "\\x07", "\\x9b", "\\U0001FFFE", "\\ud800"));
        UNSEEN.stream().filter(c -> c <= 0xFFFF).forEach(c -> escapes.add("\\u%04X".formatted(c)));
        for (String escape : escapes) {
            for (String start : List.of("name: \"Row", "\"na")) {
                String text = start + escape + "x\": Cover\ntier: 2\n";
                List<Finding> findings = read(FileKind.PRACTICE, start.equals("\"na") ? text
                        : start + escape + " cover\"\ntier: 2\nkind: row-cover\nsummary: B\n");
                assertTrue(findings.stream().anyMatch(finding -> finding.rule().equals("control-character")
                        && finding.span().start() == start.length()), () -> escape + ": " + findings);
            }
        }
        assertEquals(List.of(), read(FileKind.PRACTICE, "name: \"Row \\u00e9 \\t \\\\u202e \\x41\"\ntier: 2\n"
                + "kind: row-cover\nsummary: 'B \\u202e'\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"&#x202E;", "&#8238;", "&rlm;", "&zwj;", "&shy;", "&#xFEFF;", "&#x7F;", "&#x9b;"})
    void asEntitiesInMarkdown(String entity) {
        List<Finding> findings = read(FileKind.CHAPTER, with(FileKind.CHAPTER, entity));
        assertEquals(List.of("content/x:3:6 control-character"), findings.stream().map(finding -> finding.span()
                .place() + " " + finding.rule()).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"&#x202E;", "&#8203;", "&#xFEFF;", "&#x85;"})
    void asReferencesInDrawings(String reference) {
        assertEquals(1, read(FileKind.DRAWING, with(FileKind.DRAWING, reference)).size());
        assertEquals(1, read(FileKind.DRAWING, with(FileKind.DRAWING, "").replace("<g/>", "<g id=\"a" + reference
                + "\"/>")).size());
    }

    @Test
    void theFirstOnesOfMany() {
        assertTrue(read(FileKind.CHAPTER, "# T\n\n" + "\u202e".repeat(300_000)).size() < 30);
        assertTrue(read(FileKind.PRACTICE, "name: \"" + "\\u202e".repeat(100_000) + "\"").size() < 30);
    }
}
