package org.fieldfold.content;

import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fieldfold.report.Sha256;
import org.fieldfold.scouting.degreeday.TemperatureRecord;
import org.fieldfold.source.SourceFile;

/** All that a tree of records holds, as text: places and texts of files too, which equality leaves out. */
final class WholeTree {
    private final StringBuilder out = new StringBuilder();

    private WholeTree() {
    }

    static String of(Object value) {
        WholeTree tree = new WholeTree();
        tree.add(value, 0);
        return tree.out.toString();
    }

    private void add(Object value, int depth) {
        if (value instanceof Optional<?> optional) {
            optional.ifPresentOrElse(held -> add(held, depth), () -> line("none", depth));
        } else if (value instanceof Collection<?> all) {
            line("[" + all.size(), depth);
            all.forEach(item -> add(item, depth + 1));
        } else if (value instanceof Map<?, ?> map) {
            line("{" + map.size(), depth);
            new TreeMap<>(map).forEach((key, item) -> {
                line(key.toString(), depth);
                add(item, depth + 1);
            });
        } else if (value instanceof SourceFile file) {
            line(file.path() + " of " + file.lineCount() + " lines, " + file.text().hashCode(), depth);
        } else if (value instanceof byte[] bytes) {
            line(Sha256.of(bytes), depth);
        } else if (value instanceof TemperatureRecord record) {
            line(record.unit() + " " + record.days(), depth);
        } else if (value instanceof Double number) {
            line(HexFormat.of().toHexDigits(Double.doubleToRawLongBits(number)), depth);
        } else if (value instanceof Record record) {
            line(record.getClass().getName(), depth);
            for (RecordComponent component : record.getClass().getRecordComponents()) {
                add(component(record, component), depth + 1);
            }
        } else {
            line(value.getClass().getSimpleName() + " " + value, depth);
        }
    }

    private static Object component(Record record, RecordComponent component) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(component.toString(), e);
        }
    }

    private void line(String text, int depth) {
        out.append(" ".repeat(depth)).append(text).append('\n');
    }
}
