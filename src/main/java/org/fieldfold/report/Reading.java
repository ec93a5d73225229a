package org.fieldfold.report;

import java.util.List;

/**
 * How easy a language's guides are to read.
 *
 * @param guides each as a whole
 * @param texts pocket texts that are not plain, the hardest first
 */
public record Reading(String language, List<ReadingRow> guides, List<ReadingRow> texts) {
    public Reading {
        guides = List.copyOf(guides);
        texts = List.copyOf(texts);
    }
}
