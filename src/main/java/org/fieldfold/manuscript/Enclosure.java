package org.fieldfold.manuscript;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * A file beside the pages of a book, to which one of them leads. Until somebody wants its text, it need not be
 * written.
 *
 * @param hash the same for the same text alone; empty where it is not known
 */
public record Enclosure(String name, Optional<String> hash, Supplier<String> text) {
}
