package org.fieldfold.content;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.xml.sax.Attributes;

/**
 * How many shapes a drawing becomes when every {@code use} and every {@code clip-path} is followed: a few lines
 * that use each other twice can become more than any machine can draw.
 */
final class DrawingSize {
    private static final long MOST = 20_000;
    private static final int DEEPEST = 200;
    /** So many characters of a path count as one shape more. */
    private static final int CHARACTERS = 100;

    private static final class Part {
        private final List<Part> inside = new ArrayList<>();
        private final List<String> calls = new ArrayList<>();
        private long own = 1;
        private long total = -1;
    }

    private final Part root = new Part();
    private final Deque<Part> open = new ArrayDeque<>(List.of(root));
    private final Map<String, Part> byId = new HashMap<>();
    private int written;

    void open(Attributes attributes) {
        Part part = new Part();
        written++;
        open.peek().inside.add(part);
        open.push(part);
        for (int i = 0; i < attributes.getLength(); i++) {
            part.own += attributes.getValue(i).length() / CHARACTERS;
            String called = DrawingReferences.called(attributes.getQName(i), attributes.getValue(i));
            if (attributes.getQName(i).equals("id")) {
                byId.putIfAbsent(attributes.getValue(i), part);
            } else if (!called.isEmpty()) {
                part.calls.add(called);
            }
        }
    }

    void close() {
        open.pop();
    }

    /** What is too large or turns in a circle, if anything. */
    Optional<String> problem() {
        if (written > MOST) {
            return Optional.of("expected at most " + MOST + " elements, found " + written);
        }
        long total = total(root, new HashSet<>());
        return total < 0 ? Optional.of("expected each use and each clip-path to lead to a shape within " + DEEPEST
                        + " steps, found one that leads back to itself or further")
                : total > MOST ? Optional.of("expected at most " + MOST
                        + " shapes when every use is followed and every " + CHARACTERS
                        + " characters of a path count as one, found more")
                : Optional.empty();
    }

    /** -1 when it turns in a circle or goes too deep; stops counting beyond the limit. */
    private long total(Part part, Set<Part> under) {
        if (part.total >= 0) {
            return part.total;
        }
        if (!under.add(part) || under.size() > DEEPEST) {
            return -1;
        }
        long sum = part.own;
        List<Part> parts = new ArrayList<>(part.inside);
        part.calls.forEach(id -> Optional.ofNullable(byId.get(id)).ifPresent(parts::add));
        for (Part inner : parts) {
            long inside = total(inner, under);
            if (inside < 0) {
                return -1;
            }
            sum = Math.min(MOST + 1, sum + inside);
        }
        under.remove(part);
        part.total = sum;
        return sum;
    }
}
