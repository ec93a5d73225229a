package org.fieldfold.handbook;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.Placed;
import org.fieldfold.prose.Run;
import org.fieldfold.report.Sha256;

/** A base whose every text tries to be something else. Ids stay, so that entries still find each other. */
final class Hostile {
    static final String TEXT =
            "<script>alert(1)</script>\"'><img src=x onerror=alert(1)>${7*191}[[${7*191}]][(${7*191})]"
            + "__${7*191}__*{7*191}#{x}]]>&lt;<!--\u0000\u0008\ud800";

    /** The same as a reader sees it: what no page may hold is replaced. */
    static final String SEEN = TEXT.replace('\u0000', '\ufffd').replace('\u0008', '\ufffd')
            .replace('\ud800', '\ufffd');

    private static final List<String> LINKS = List.of("javascript:alert(1)", "JavaScript:alert(1)",
            "data:text/html,x", "#nowhere\"><script>", "vbscript:x", "https://ok.example/?q=<script>\"",
            "//elsewhere.example", "file:///x",
            " javascript:alert(1)", "mailto:x@y.example?subject=\"<script>");

    private final Set<String> ids = new HashSet<>();
    private int link;

    static ContentBase of(ContentBase base) throws ReflectiveOperationException {
        Hostile hostile = new Hostile();
        for (RecordComponent component : ContentBase.class.getRecordComponents()) {
            if (component.getAccessor().invoke(base) instanceof SortedMap<?, ?> map) {
                map.keySet().forEach(id -> hostile.ids.add((String) id));
            }
        }
        base.edition().value().reviewers().forEach(reviewer -> hostile.ids.add(reviewer.id()));
        base.pests().values().forEach(pest -> {
            pest.value().monitoring().forEach(look -> hostile.ids.add(look.id()));
            pest.value().thresholds().forEach(threshold -> hostile.ids.add(threshold.id()));
        });
        return (ContentBase) hostile.turned(base);
    }

    private Object turned(Object value) throws ReflectiveOperationException {
        if (value instanceof String text) {
            return ids.contains(text) ? text : TEXT;
        } else if (value instanceof Run run) {
            return new Run(TEXT, run.style(), LINKS.get(link++ % LINKS.size()));
        } else if (value instanceof Optional<?> optional) {
            return optional.isEmpty() ? optional : Optional.of(turned(optional.get()));
        } else if (value instanceof List<?> list) {
            List<Object> all = new ArrayList<>();
            for (Object item : list) {
                all.add(turned(item));
            }
            return all;
        } else if (value instanceof SortedMap<?, ?> map) {
            SortedMap<Object, Object> all = new TreeMap<>();
            for (Map.Entry<?, ?> item : map.entrySet()) {
                all.put(item.getKey(), turned(item.getValue()));
            }
            return all;
        } else if (value instanceof Placed<?> placed) {
            return new Placed<>(turned(placed.value()), placed.spans());
        } else if (value instanceof Figure figure) {
            byte[] drawing = ("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 1 1'><title>" + TEXT
                    + "</title></style><script>alert(1)</script>\"}</svg>")
                    .getBytes(java.nio.charset.StandardCharsets.UTF_8);
            return new Figure(figure.id(), (org.fieldfold.entry.FigureNote) turned(figure.note()),
                    figure.file(), drawing, Sha256.of(drawing));
        } else if (value instanceof Record record && !(record instanceof org.fieldfold.source.Span)) {
            return rebuilt(record);
        }
        return value;
    }

    private Object rebuilt(Record record) throws ReflectiveOperationException {
        RecordComponent[] components = record.getClass().getRecordComponents();
        Class<?>[] types = new Class<?>[components.length];
        Object[] values = new Object[components.length];
        for (int i = 0; i < components.length; i++) {
            types[i] = components[i].getType();
            values[i] = turned(components[i].getAccessor().invoke(record));
        }
        try {
            return record.getClass().getDeclaredConstructor(types).newInstance(values);
        } catch (InvocationTargetException refused) {
            return record;
        }
    }
}
