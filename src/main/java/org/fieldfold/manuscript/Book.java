package org.fieldfold.manuscript;

import java.util.List;
import java.util.Optional;
import org.fieldfold.prose.Run;

/**
 * The handbook, from its first page to its last.
 *
 * @param edition year and until when it holds, shown on every page
 * @param proof a mark on every page while findings stand; empty on a clean copy
 * @param foot the caution at the foot of every page, with the demonstration notice where there is one
 * @param files beside the pages
 */
public record Book(String title, String language, String publisher, int year, String edition,
        Optional<String> proof, List<Run> foot, List<Leaf> leaves, List<Enclosure> files) {
    public Book {
        foot = List.copyOf(foot);
        leaves = List.copyOf(leaves);
        files = List.copyOf(files);
        if (leaves.isEmpty()) {
            throw new IllegalArgumentException("a handbook without a page");
        }
    }

    /** All pages, written. */
    public List<Page> pages() {
        return leaves.stream().map(Leaf::page).toList();
    }
}
