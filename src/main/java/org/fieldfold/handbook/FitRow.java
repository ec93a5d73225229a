package org.fieldfold.handbook;

/**
 * How one section of a foldout fits its panel.
 *
 * @param guide id of the guide
 * @param paper as in {@code letter}
 * @param panel number of the panel in reading order, from 1
 * @param section what stands on it
 * @param used share of the panel's height that is filled: 1 is full, more is too much
 * @param typeSize size of body type, in points
 * @param brief how many blocks had to be set in their short form
 */
public record FitRow(String guide, String paper, int panel, String section, double used, double typeSize,
        int brief) {
    public FitRow {
        if (panel < 1 || !(used >= 0) || !(typeSize > 0) || brief < 0) {
            throw new IllegalArgumentException("fit of " + guide + ", panel " + panel + ": used " + used
                    + ", type " + typeSize + " pt, brief " + brief);
        }
    }
}
