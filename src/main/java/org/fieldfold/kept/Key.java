package org.fieldfold.kept;

import java.util.List;
import java.util.Set;
import org.fieldfold.source.Span;

/**
 * What something is made of, as one hash. Places in files are not part of it: a kept result names them by
 * their number here, and so speaks of where things stand now.
 *
 * @param hash hexadecimal SHA-256
 * @param places those in what was hashed, each once, in the order in which they were met
 * @param named the names of other things whose own hashes are part of this one
 */
public record Key(String hash, List<Span> places, Set<String> named) {
    public Key {
        places = List.copyOf(places);
        named = Set.copyOf(named);
    }
}
