package org.fieldfold.trace;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * What was read of a base: of each of its parts the ids that were asked for, whether they were there or not;
 * or which ids there are; or all of it.
 */
final class Trace {
    private static final int NAMES = 1;
    private static final int ALL = 2;

    private final Map<String, Reads> parts = new HashMap<>();

    /** Of one part. */
    private static final class Reads {
        private final Set<String> ids = new HashSet<>();
        private boolean names;
        private boolean all;
    }

    synchronized void record(String part, String id) {
        of(part).ids.add(id);
    }

    /** Which ids there are, and in which order. */
    synchronized void names(String part) {
        of(part).names = true;
    }

    synchronized void all(String part) {
        of(part).all = true;
    }

    private Reads of(String part) {
        return parts.computeIfAbsent(part, first -> new Reads());
    }

    /** Whether anything that was read is among what changed. */
    synchronized boolean meets(Changes changes) {
        return changes.isEverything() || parts.entrySet().stream().anyMatch(part -> {
            Reads reads = part.getValue();
            Set<String> changed = changes.records(part.getKey());
            return reads.all && !changed.isEmpty()
                    || (reads.all || reads.names) && changes.areNames(part.getKey())
                    || changed.stream().anyMatch(reads.ids::contains);
        });
    }

    synchronized void write(ResultWriter out) {
        out.number(parts.size());
        parts.forEach((part, reads) -> {
            out.text(part);
            out.number((reads.names ? NAMES : 0) + (reads.all ? ALL : 0));
            out.texts(reads.ids);
        });
    }

    static Trace read(ResultReader in) {
        Trace trace = new Trace();
        for (int left = in.count(); left > 0; left--) {
            Reads reads = trace.of(in.text());
            int how = in.number();
            reads.names = (how & NAMES) != 0;
            reads.all = (how & ALL) != 0;
            reads.ids.addAll(in.texts());
        }
        return trace;
    }
}
