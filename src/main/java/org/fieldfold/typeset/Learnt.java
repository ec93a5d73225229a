package org.fieldfold.typeset;

/**
 * What is known from guides that were set before.
 *
 * @param trials of type with these metrics and of figures of the same press
 * @param words of type with these metrics
 */
public record Learnt(Trials trials, WordCase words) {
    static Learnt nothing(TypeMetrics metrics) {
        return new Learnt(Trials.NONE, new WordCase(metrics));
    }
}
