package org.fieldfold.handbook;

import java.util.List;

/**
 * What a form answered while something was made of a page: made again, it would be the same as long as the form
 * answers alike.
 *
 * @param under what stands for all answers of that time but those about columns, see {@link Binding#answers}
 * @param columns names and classes by turns; which class a column has depends on those that were asked for before
 * @param figures that were asked for, which a form then counts as shown
 * @param asked all questions with their answers, written down by {@link AskedForm}
 */
record Told(String under, List<String> columns, List<String> figures, byte[] asked) {
    /** Of what is not kept. */
    static final Told NOTHING = new Told("", List.of(), List.of(), new byte[0]);

    /**
     * Asks a form again and says whether it answers alike. It asks no further than the first other answer: so it
     * asks nothing that the page, written anew, would not, and a form that remembers what it was asked for knows no
     * more than after a page that was written.
     *
     * @param answers what stands for all answers now
     */
    boolean holds(Form form, String answers) {
        if (!under.equals(answers)) {
            return AskedForm.holds(form, asked);
        }
        for (int i = 0; i < columns.size(); i += 2) {
            if (!form.column(columns.get(i)).orElse("").equals(columns.get(i + 1))) {
                return false;
            }
        }
        figures.forEach(form::drawn);
        return true;
    }

    /** The same under answers of another time that are alike where it asked. */
    Told under(String answers) {
        return under.equals(answers) ? this : new Told(answers, columns, figures, asked);
    }

    /** Something made of a page, with what it was told. */
    interface Made<T> {
        Told told();

        /** The same with something else that it was told. */
        T told(Told other);
    }
}
