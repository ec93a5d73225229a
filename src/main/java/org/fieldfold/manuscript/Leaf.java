package org.fieldfold.manuscript;

import java.util.Optional;
import java.util.function.Supplier;

/** A page in a book. Until somebody reads it, it need not be written. */
public final class Leaf {
    private final Page.Head head;
    private final Optional<String> hash;
    private final Supplier<Page> page;

    /** @param page the same each time */
    Leaf(Page.Head head, Optional<String> hash, Supplier<Page> page) {
        this.head = head;
        this.hash = hash;
        this.page = page;
    }

    /** @param hash of all that stands on it; empty where nobody wants to know */
    static Leaf of(Page page, Optional<String> hash) {
        return new Leaf(page.head(), hash, () -> page);
    }

    public Page.Head head() {
        return head;
    }

    public String id() {
        return head.id();
    }

    public Page.Kind kind() {
        return head.kind();
    }

    public String name() {
        return head.name();
    }

    public String up() {
        return head.up();
    }

    /** The same for the same page alone; empty where it is not known. */
    public Optional<String> hash() {
        return hash;
    }

    public Page page() {
        return page.get();
    }
}
