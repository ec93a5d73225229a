package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.manuscript.Section;

/**
 * Which sections and panels belong together before any filling: the cover and the last panel are fixed, all
 * others flow.
 */
record Seats(Optional<Section> cover, Optional<Frame> first, List<Section> flow, List<Frame> inner,
        Optional<Section> contact, Optional<Frame> last) {
    static Seats of(List<Section> sections, List<Frame> frames) {
        List<Frame> inner = new ArrayList<>(frames);
        List<Section> flow = new ArrayList<>(sections);
        Optional<Section> cover = take(flow, Section.Kind.COVER);
        Optional<Frame> first = cover.isPresent() ? take(inner, Frame.Place.FIRST, 0) : Optional.empty();
        Optional<Section> contact = inner.isEmpty() ? Optional.empty() : take(flow, Section.Kind.CONTACT);
        Optional<Frame> last = contact.isPresent() ? take(inner, Frame.Place.LAST, inner.size() - 1)
                : Optional.empty();
        return new Seats(cover, first, List.copyOf(flow), List.copyOf(inner), contact, last);
    }

    private static Optional<Section> take(List<Section> sections, Section.Kind kind) {
        Optional<Section> found = sections.stream().filter(section -> section.kind() == kind).findFirst();
        found.ifPresent(sections::remove);
        return found;
    }

    private static Optional<Frame> take(List<Frame> frames, Frame.Place place, int otherwise) {
        Optional<Frame> found = frames.stream().filter(frame -> frame.place() == place).findFirst();
        Frame taken = found.orElseGet(() -> frames.get(otherwise));
        frames.remove(taken);
        return Optional.of(taken);
    }
}
