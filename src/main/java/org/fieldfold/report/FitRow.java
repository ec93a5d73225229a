package org.fieldfold.report;

import java.util.List;
import java.util.Optional;
import org.fieldfold.source.Span;

/**
 * How one section of a foldout fits its panel.
 *
 * @param guide id of the guide
 * @param paper as in {@code letter}
 * @param panel number of the panel in reading order, from 1
 * @param section what stands on it: the id of an entry, {@code cover}, {@code scouting}, {@code contact}
 * @param used share of the panel's height that is filled: 1 is full, more is too much
 * @param typeSize size of body type, in points
 * @param leading from one line to the next, in points
 * @param forms which form was taken of every text that has a short one
 * @param over what does not fit
 */
public record FitRow(String guide, String paper, int panel, String section, double used, double typeSize,
        double leading, List<Form> forms, Optional<Over> over) {
    public FitRow {
        forms = List.copyOf(forms);
        if (panel < 1 || !(used >= 0) || !(typeSize > 0) || !(leading > 0)) {
            throw new IllegalArgumentException("fit of " + guide + ", panel " + panel + ": used " + used
                    + ", type " + typeSize + " on " + leading + " pt");
        }
    }

    /**
     * The form that was taken of a text.
     *
     * @param field path of keys and 0-based list positions in the file, as in {@code controls/0}
     * @param brief the short form; otherwise the full one
     */
    public record Form(String field, boolean brief) {
    }

    /**
     * What is too long.
     *
     * @param entry id of the section
     * @param field the first that does not fit whole
     * @param at where that stands
     * @param lines by how many it is too long, with all that follows on the panel
     */
    public record Over(String entry, String field, Span at, int lines) {
    }

    /** How many texts had to be set in their short form. */
    public int brief() {
        return (int) forms.stream().filter(Form::brief).count();
    }
}
