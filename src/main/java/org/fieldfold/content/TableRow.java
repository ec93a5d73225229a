package org.fieldfold.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One record of a table in its file.
 *
 * @param file its path below the content folder
 * @param keys which record it is
 */
record TableRow(TableKind kind, String file, List<String> keys) {
    /** The path of a column's value in the file, whatever form its text has there. */
    Object[] path(TableKind.Column column, InPlace text) {
        List<Object> path = new ArrayList<>(List.of(kind.list(), keys.get(keys.size() - 1)));
        path.addAll(column.path());
        Object[] plain = path.toArray();
        path.add("pocket");
        return text.value(path.toArray()).isPresent() ? path.toArray() : plain;
    }

    /** What stands there now; empty where nothing does. */
    Optional<String> value(TableKind.Column column, InPlace text) {
        return text.value(path(column, text)).map(String::strip);
    }

    String shown() {
        return String.join("/", keys);
    }
}
