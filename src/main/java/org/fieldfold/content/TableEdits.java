package org.fieldfold.content;

import java.util.List;
import java.util.SortedMap;

/**
 * What a table from a spreadsheet would do.
 *
 * @param changes a line each
 * @param refusals what is not understood, with row, column and reason; while there is one, no file changes
 * @param files the new bytes of each file that changes, by its path below the content folder
 */
public record TableEdits(List<String> changes, List<String> refusals, SortedMap<String, byte[]> files) {
    public TableEdits {
        changes = List.copyOf(changes);
        refusals = List.copyOf(refusals);
    }
}
