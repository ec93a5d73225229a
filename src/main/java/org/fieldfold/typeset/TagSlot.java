package org.fieldfold.typeset;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;
import org.fieldfold.prose.Run;

/**
 * A tag that will be needed once something is drawn in it. Blocks are set several times before one setting is
 * drawn, and one setting may be drawn for many offices; each drawing makes its own tags, in the order of
 * drawing, which is the reading order.
 */
final class TagSlot {
    private final Optional<TagSlot> parent;
    private final UnaryOperator<Tag> make;
    private final Optional<String> expansion;
    private final Map<Integer, TagSlot> inner = new ConcurrentHashMap<>(2);

    private TagSlot(Optional<TagSlot> parent, UnaryOperator<Tag> make, Optional<String> expansion) {
        this.parent = parent;
        this.make = make;
        this.expansion = expansion;
    }

    /** A child of the section that the pen is in. */
    static TagSlot inSection(Tag.Role role) {
        return new TagSlot(Optional.empty(), section -> section.add(role), Optional.empty());
    }

    static TagSlot figure(String alternative) {
        return new TagSlot(Optional.empty(), section -> section.addFigure(alternative), Optional.empty());
    }

    TagSlot figureIn(String alternative) {
        return in(tag -> tag.addFigure(alternative));
    }

    TagSlot in(Tag.Role role) {
        return in(tag -> tag.add(role));
    }

    private TagSlot in(UnaryOperator<Tag> inside) {
        return new TagSlot(Optional.of(this), inside, Optional.empty());
    }

    /**
     * For a run of a text in this tag: a link, words in a language of their own, an abbreviation, or this tag
     * itself.
     *
     * @param standsFor what the run stands for, where it is an abbreviation
     */
    TagSlot of(int position, Run run, Optional<String> standsFor) {
        boolean link = isLink(run);
        String language = run.style() == Run.Style.NAME ? "la" : run.language();
        if (!link && language.isEmpty() && standsFor.isEmpty()) {
            return this;
        }
        return inner.computeIfAbsent(position, unseen -> {
            TagSlot outer = link ? in(tag -> tag.addLink(run.link())) : this;
            TagSlot said = language.isEmpty() ? outer : outer.in(tag -> tag.addSpan(language));
            return standsFor.isEmpty() ? said
                    : new TagSlot(Optional.of(said), tag -> tag.addAbbreviation(standsFor.get()), standsFor);
        });
    }

    /** A place in the handbook is none on paper. */
    static boolean isLink(Run run) {
        return !run.link().isEmpty() && !run.link().startsWith("#");
    }

    Optional<TagSlot> parent() {
        return parent;
    }

    /** What it is the abbreviation of: its tag is only needed the first time. */
    Optional<String> expansion() {
        return expansion;
    }

    Tag make(Tag around) {
        return make.apply(around);
    }
}
