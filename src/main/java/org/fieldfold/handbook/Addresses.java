package org.fieldfold.handbook;

import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.fieldfold.manuscript.Book;
import org.fieldfold.manuscript.Leaf;
import org.fieldfold.manuscript.Page;

/**
 * Gives each page of a book a short name that is safe in a file name and in an address, and finds it again.
 */
final class Addresses {
    private static final Pattern UNSAFE = Pattern.compile("[^a-z0-9]+");
    private static final Pattern ENDS = Pattern.compile("^-|-$");

    private final Map<Leaf, String> byPage = new IdentityHashMap<>();
    private final Map<String, Leaf> byId = new LinkedHashMap<>();

    Addresses(Book book) {
        Set<String> taken = new HashSet<>();
        for (Leaf page : book.leaves()) {
            String name = page.kind() == Page.Kind.START ? "index" : plain(page.id());
            String free = name;
            for (int i = 2; !taken.add(free); i++) {
                free = name + "-" + i;
            }
            byPage.put(page, free);
            byId.putIfAbsent(page.id(), page);
        }
    }

    /** {@code crop:sweet-corn} becomes {@code crop-sweet-corn}, {@code at:look} becomes {@code look}. */
    private static String plain(String id) {
        String name = ENDS.matcher(UNSAFE.matcher(id.startsWith("at:") ? id.substring(3) : id).replaceAll("-"))
                .replaceAll("");
        return name.isEmpty() ? "page" : name;
    }

    String of(Leaf page) {
        return byPage.get(page);
    }

    /** The page that an id names, if the book has it. */
    Optional<Leaf> page(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** Where a part of a page stands: unique in a whole book. */
    String anchor(Leaf page, String part) {
        return of(page) + "--" + part;
    }

    /** What {@code #id} or {@code #id/part} leads to; empty when the book has no such page or part. */
    Optional<Target> target(String link) {
        int slash = link.indexOf('/');
        String id = slash < 0 ? link.substring(1) : link.substring(1, slash);
        Optional<Leaf> page = page(id);
        if (slash < 0 || page.isEmpty()) {
            return page.map(found -> new Target(found, Optional.empty()));
        }
        String part = link.substring(slash + 1);
        boolean known = page.get().head().parts().contains(part);
        return Optional.of(new Target(page.get(), known ? Optional.of(part) : Optional.empty()));
    }

    /** A page, and the part of it that is meant. */
    record Target(Leaf page, Optional<String> part) {
    }
}
