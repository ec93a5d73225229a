package org.fieldfold.handbook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.Placed;
import org.fieldfold.kept.Kept;

/** The figures of a base under short names, in the order of their ids. */
final class Drawings {
    private final Map<String, Drawing> byId = new LinkedHashMap<>();
    private final Set<String> shown = new TreeSet<>();

    Drawings(ContentBase base) {
        Set<String> files = new HashSet<>();
        for (Placed<Figure> placed : base.figures().values()) {
            Figure figure = placed.value();
            String ending = figure.file().substring(figure.file().lastIndexOf('.') + 1)
                    .replaceAll("[^a-z]", "");
            String plain = figure.id().replaceAll("[^a-z0-9]+", "-");
            String file = plain + "." + ending;
            for (int i = 2; !files.add(file); i++) {
                file = plain + "-" + i + "." + ending;
            }
            byId.put(figure.id(), Drawing.of("f" + byId.size(), file, figure));
        }
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

    /**
     * Style rules that put each drawing that is shown behind its name, made of nothing but these drawings.
     */
    String style(Kept kept) {
        StringBuilder rules = new StringBuilder();
        shown().forEach(drawing -> rules.append(kept.value(drawing.key(kept, "style"), Rule.class,
                () -> rule(drawing)).text()));
        return rules.toString();
    }

    private record Rule(String text) {
    }

    private static Rule rule(Drawing drawing) {
        return new Rule("." + drawing.name() + "{aspect-ratio:" + drawing.width() + "/" + drawing.height()
                + ";background-image:url(\"" + drawing.data() + "\")}\n");
    }
}
