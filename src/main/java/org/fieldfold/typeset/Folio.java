package org.fieldfold.typeset;

/**
 * How panels are numbered at their foot.
 *
 * @param words with {@code {0}} for the panel's number and {@code {1}} for how many there are
 */
record Folio(String words, int panels) {
    /** The number alone. */
    static final String NUMBER = "{0}";
    /** What is on a panel between its head and its foot does not know how panels are numbered. */
    static final Folio NONE = new Folio("", 0);

    String of(int reading) {
        return words.replace("{0}", Integer.toString(reading)).replace("{1}", Integer.toString(panels));
    }
}
