package org.fieldfold;

import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Which offices of a region are packed: those whose ids lie between two others, and of these one part of
 * several. All parts together are the whole.
 *
 * @param from first id; blank for the first of all
 * @param to last id, or how the last ids begin; blank for the last of all
 * @param slice which part, from 1
 * @param slices how many parts there are
 */
public record OfficeChoice(String from, String to, int slice, int slices) {
    private static final Pattern RANGE = Pattern.compile("([a-z0-9-]*)\\.\\.([a-z0-9-]*)");
    private static final Pattern SLICE = Pattern.compile("([0-9]{1,5})/([0-9]{1,5})");

    public OfficeChoice {
        if (slices < 1 || slice < 1 || slice > slices) {
            throw new IllegalArgumentException("expected a slice from 1/" + slices + " to " + slices + "/"
                    + slices + ", found " + slice + "/" + slices);
        }
    }

    /**
     * As it is written: {@code a..m}, or one id; and {@code 3/8}.
     *
     * @throws IllegalArgumentException with what was expected and found
     */
    public static OfficeChoice of(String offices, String slice) {
        Matcher range = RANGE.matcher(offices);
        Matcher part = SLICE.matcher(slice);
        boolean one = offices.matches("[a-z0-9-]+");
        if (!one && !range.matches()) {
            throw new IllegalArgumentException("expected offices as in a..m, found '" + offices + "'");
        }
        if (!part.matches()) {
            throw new IllegalArgumentException("expected a slice as in 3/8, found '" + slice + "'");
        }
        return new OfficeChoice(one ? offices : range.group(1), one ? offices : range.group(2),
                Integer.parseInt(part.group(1)), Integer.parseInt(part.group(2)));
    }

    /** Those of {@code ids} that are chosen, in the order of the alphabet. */
    List<String> of(Iterable<String> ids) {
        TreeSet<String> inRange = new TreeSet<>();
        for (String id : ids) {
            if (id.compareTo(from) >= 0 && (to.isEmpty() || id.compareTo(to) <= 0 || id.startsWith(to))) {
                inRange.add(id);
            }
        }
        List<String> sorted = List.copyOf(inRange);
        return IntStream.range(0, sorted.size()).filter(i -> i % slices == slice - 1).mapToObj(sorted::get)
                .toList();
    }
}
