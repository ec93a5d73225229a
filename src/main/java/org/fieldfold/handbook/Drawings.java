package org.fieldfold.handbook;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.Placed;
import org.fieldfold.kept.Kept;
import org.fieldfold.kept.Key;

/** The figures of a base under short names, in the order of their ids. */
final class Drawings {
    private static final List<String> KINDS = List.of("style", "epub");
    private static final int HALF = 32;
    private static final Pattern NO_LETTERS = Pattern.compile("[^a-z]");
    private static final Pattern UNSAFE = Pattern.compile("[^a-z0-9]+");

    private final Map<String, Drawing> byId;
    private final Map<String, Optional<Key>> kinds = new HashMap<>();
    private final Set<String> shown = new TreeSet<>();

    Drawings(ContentBase base) {
        this(new LinkedHashMap<>());
        Set<String> files = new HashSet<>();
        for (Placed<Figure> placed : base.figures().values()) {
            Figure figure = placed.value();
            String ending = NO_LETTERS.matcher(figure.file().substring(figure.file().lastIndexOf('.') + 1))
                    .replaceAll("");
            String plain = UNSAFE.matcher(figure.id()).replaceAll("-");
            String file = plain + "." + ending;
            for (int i = 2; !files.add(file); i++) {
                file = plain + "-" + i + "." + ending;
            }
            byId.put(figure.id(), Drawing.of("f" + byId.size(), file, figure));
        }
    }

    private Drawings(Map<String, Drawing> byId) {
        this.byId = byId;
    }

    /** The same, of which none was shown yet. */
    Drawings unshown() {
        return new Drawings(byId);
    }

    /** What pages are told of them. */
    List<String> named() {
        List<String> named = new ArrayList<>();
        byId.forEach((id, drawing) -> named.add(String.join(" ", "figure", id, drawing.name(), drawing.file(),
                String.valueOf(drawing.width()), String.valueOf(drawing.height()))));
        return named;
    }

    /** The drawing of a figure's id; from then on it counts as shown. */
    Optional<Drawing> find(String figure) {
        Optional<Drawing> found = Optional.ofNullable(byId.get(figure));
        found.ifPresent(drawing -> shown.add(figure));
        return found;
    }

    /** Those that some page shows. */
    List<Drawing> shown() {
        List<Drawing> all = new ArrayList<>();
        byId.forEach((id, drawing) -> {
            if (shown.contains(id)) {
                all.add(drawing);
            }
        });
        return all;
    }

    /** Style rules that put each drawing that is shown behind its name. */
    List<byte[]> style(Kept kept) {
        List<byte[]> rules = new ArrayList<>();
        shown().forEach(drawing -> {
            rules.add(("." + drawing.name()).getBytes(StandardCharsets.UTF_8));
            rules.add(kept.value(key("style", drawing, kept), Rule.class, () -> new Rule(rule(drawing)
                    .getBytes(StandardCharsets.UTF_8))).text());
        });
        return rules;
    }

    /** A drawing as a file of an EPUB. */
    EpubZip.Packed packed(Drawing drawing, Kept kept) {
        return kept.value(key("epub", drawing, kept), EpubZip.Packed.class,
                () -> EpubZip.packed(drawing.figure().bytes()));
    }

    /** Says that what was made of them is in use, though nobody had to ask for it. */
    void use(Kept kept) {
        byId.values().forEach(drawing -> KINDS.forEach(kind -> key(kind, drawing, kept).ifPresent(kept::use)));
    }

    /** Made of nothing but the drawing. */
    private static String rule(Drawing drawing) {
        return "{aspect-ratio:" + drawing.width() + "/" + drawing.height() + ";background-image:url(\""
                + drawing.data() + "\")}\n";
    }

    private record Rule(byte[] text) {
    }

    /** All drawings, whichever of them are shown. */
    List<List<String>> bytes() {
        return byId.values().stream().map(drawing -> List.of(drawing.name(), drawing.file(),
                drawing.figure().sha256())).toList();
    }

    /** Half of the hash of the figure's bytes and half of that of what is made of it. */
    private Optional<Key> key(String what, Drawing drawing, Kept kept) {
        String ending = drawing.file().substring(drawing.file().lastIndexOf('.'));
        return kinds.computeIfAbsent(what + ending, first -> kept.key("drawing", what, ending)).map(kind ->
                new Key(drawing.figure().sha256().substring(0, HALF) + kind.hash().substring(0, HALF), List.of(),
                        Set.of()));
    }
}
