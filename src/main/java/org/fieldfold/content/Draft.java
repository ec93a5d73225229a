package org.fieldfold.content;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.fieldfold.entry.ContentBase;

/**
 * A new file with every key that it needs, what each means in a comment, and nothing filled in: reading it
 * says, line by line, what is still to be written. Keys that may be left out stand there as comments.
 *
 * @param path where it belongs in the content base
 */
public record Draft(String path, String text) {
    private static final int WIDEST = 110;
    /** Written by a command, not by hand. */
    private static final Set<String> BY_SIGN = Set.of("revised", "reviser", "carried-over", "signed-facts",
            "signed-with");
    /** Lists that a new file may well do without; a beginner is not asked for them. */
    private static final Set<String> MAY_WAIT = Set.of("audiences", "figures", "leave-out", "local",
            "look-alikes", "nets", "notes", "papers", "requests", "spare", "together", "watch");
    /** Keys that some file does without, but for which a rule asks in nearly all: by record. */
    private static final Map<String, Set<String>> ASKED_FOR = Map.of(
            "threshold", Set.of("stages", "value", "counted", "source"), "insecticide", Set.of("when", "stages"));

    /** Which keys of a record are written: all, all behind a {@code #}, or those that are needed. */
    private enum Which { ALL, COMMENTED, NEEDED }

    /** What can be drafted, as it is said on the command line. */
    public static List<String> kinds() {
        return drafted().stream().map(FileKind::schema).toList();
    }

    /**
     * A draft with every key, those that may be left out as comments.
     *
     * @param kind one of {@link #kinds()}
     * @param id the new file's name without its ending: lower-case letters, digits, single hyphens
     * @throws IllegalArgumentException for a kind or an id that is none
     */
    public static Draft of(String kind, String id) {
        return of(kind, id, false);
    }

    /**
     * A draft.
     *
     * @param brief without the keys that may be left out
     * @throws IllegalArgumentException for a kind or an id that is none
     */
    public static Draft of(String kind, String id, boolean brief) {
        FileKind file = drafted().stream().filter(known -> known.schema().equals(kind)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "expected one of " + String.join(", ", kinds()) + ", found '" + kind + "'"));
        if (!id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            throw new IllegalArgumentException("expected an id of lower-case letters, digits and single "
                    + "hyphens, as in leek-moth, found '" + id + "'");
        }
        StringBuilder text = new StringBuilder("# yaml-language-server: $schema=../.schema/" + file.schema()
                + ".json\n"
                + (brief ? "# Fill in what is empty. There are more keys: 'fieldfold draft' without --short shows "
                + "them.\n"
                : "# Fill in what is empty; take the # from a line that you need, and delete the others.\n"));
        fields(file.shape(), "", brief ? Which.NEEDED : Which.ALL, text);
        if (file.shape().keys().contains("reviser")) {
            text.append("# When all is right, 'fieldfold sign ").append(id)
                    .append(" --by REVIEWER' writes who re-read it, and when.\n");
        }
        return new Draft(file.folder() + "/" + id + ".yaml", text.toString());
    }

    /**
     * The files in which the texts of a base are translated, as they should stand now: what is translated is
     * kept, what is missing or due is marked.
     *
     * @param file one base file without its ending, as in {@code pests/onion-thrips}; empty for all
     * @param earlier what a text said when it was translated, by its hash then; empty when nobody knows
     * @throws IllegalArgumentException for a language or a file that is none
     */
    public static List<Draft> translations(ContentBase base, String language, Optional<String> file,
            Function<String, Optional<String>> earlier) {
        return TranslationDraft.of(base, language, file, earlier);
    }

    private static List<FileKind> drafted() {
        return List.of(FileKind.PEST, FileKind.NATURAL_ENEMY, FileKind.PRACTICE, FileKind.GUIDE,
                FileKind.OFFICE);
    }

    private static void fields(Shape.Fields fields, String indent, Which which, StringBuilder out) {
        for (Shape.Field field : fields.fields()) {
            if (field.presence() == Shape.Presence.FROM_FILE_NAME || BY_SIGN.contains(field.key())) {
                continue;
            }
            boolean optional = which == Which.COMMENTED || mayWait(fields, field);
            if (optional && which == Which.NEEDED) {
                continue;
            }
            comment(says(field), indent, out);
            value(field.key() + ":", field.shape(), indent, optional ? Which.COMMENTED : which, out);
        }
    }

    private static boolean mayWait(Shape.Fields fields, Shape.Field field) {
        boolean rows = field.key().equals("steps") && field.shape() instanceof Shape.Listed list
                && list.item() instanceof Shape.Fields;
        return rows || MAY_WAIT.contains(field.key()) || field.presence() == Shape.Presence.OPTIONAL
                && !ASKED_FOR.getOrDefault(fields.name(), Set.of()).contains(field.key());
    }

    /** The meaning, and the vocabulary where there is one. */
    private static String says(Shape.Field field) {
        Shape shape = field.shape() instanceof Shape.Listed list ? list.item() : field.shape();
        return field.description() + (shape instanceof Shape.Words ? "; " + shape.expected() : "");
    }

    private static void comment(String words, String indent, StringBuilder out) {
        String rest = words;
        while (rest.length() > WIDEST) {
            int cut = rest.lastIndexOf(' ', WIDEST);
            out.append(indent).append("# ").append(rest, 0, cut).append('\n');
            rest = "  " + rest.substring(cut + 1);
        }
        out.append(indent).append("# ").append(rest).append('\n');
    }

    private static void value(String head, Shape shape, String indent, Which which, StringBuilder out) {
        String mark = which == Which.COMMENTED ? "# " : "";
        if (shape instanceof Shape.Fields inner) {
            out.append(indent).append(mark).append(head).append('\n');
            fields(inner, indent + "  ", which, out);
        } else if (shape instanceof Shape.Listed list && list.item() instanceof Shape.Fields inner) {
            out.append(indent).append(mark).append(head).append('\n');
            item(inner, "", indent + "  ", which, out);
        } else if (shape instanceof Shape.Listed list && list.item() instanceof Shape.Tiers tiers) {
            out.append(indent).append(mark).append(head).append('\n');
            for (int tier = 1; tier <= tiers.byTier().size(); tier++) {
                item(tiers.byTier().get(tier - 1), "tier: " + tier, indent + "  ", which, out);
            }
        } else if (shape instanceof Shape.Listed) {
            out.append(indent).append(mark).append(head).append(" []\n");
        } else {
            out.append(indent).append(mark).append(head).append('\n');
        }
    }

    private static void item(Shape.Fields fields, String first, String indent, Which which,
            StringBuilder out) {
        StringBuilder inner = new StringBuilder();
        fields(fields, indent + "  ", which, inner);
        if (first.isEmpty()) {
            out.append(indent).append(which == Which.COMMENTED ? "# -\n" : "-\n");
        } else {
            out.append(indent).append("- ").append(first).append('\n');
        }
        out.append(inner);
    }
}
