package org.fieldfold.handbook;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.fieldfold.kept.Key;
import org.fieldfold.manuscript.Leaf;

/**
 * Pages of a book in one form, written or taken as an earlier build wrote them: made of the page itself, of what
 * stands on all pages, and of what the form answered while they were written.
 */
final class KeptPages {
    private static final int HALF = 32;

    private final Binding binding;
    private final Form form;
    private final Map<String, Optional<String>> kinds = new HashMap<>();

    KeptPages(Binding binding, Form form) {
        this.binding = binding;
        this.form = form;
    }

    /** Text or markup, as it is in a file. */
    record Written(Told told, byte[] text) implements Told.Made<Written> {
        static Written of(String text) {
            return new Written(Told.NOTHING, text.getBytes(StandardCharsets.UTF_8));
        }

        @Override
        public Written told(Told other) {
            return new Written(other, text);
        }
    }

    /** The page as it stands in a body. */
    byte[] markup(Leaf leaf) {
        return made("markup", leaf, Written.class, asked -> Written.of(markup(leaf, asked))).text();
    }

    String markup(Leaf leaf, Form asked) {
        Markup out = new Markup();
        binding.markup(asked).write(out, leaf);
        return out.toString();
    }

    /**
     * Anything made of a page.
     *
     * @param what it is; of one page there is one in this form
     * @param make makes it of the page, asking the form that it is given
     */
    <T extends Record & Told.Made<T>> T made(String what, Leaf leaf, Class<T> type, Function<Form, T> make) {
        Optional<Key> key = key(what, leaf);
        if (key.isEmpty()) {
            return make.apply(form);
        }
        String answers = binding.answers().orElseThrow();
        return binding.kept().renewed(key, type, known -> {
            if (known.isPresent() && known.get().told().holds(form, answers)) {
                Told told = known.get().told();
                return told.under(answers) == told ? known.get() : known.get().told(told.under(answers));
            }
            AskedForm asked = new AskedForm(form);
            T made = make.apply(asked);
            return made.told(asked.told(answers));
        });
    }

    /** Says that what was made of a page is in use, though nobody had to ask for it. */
    void use(String what, Leaf leaf) {
        key(what, leaf).ifPresent(binding.kept()::use);
    }

    /** Half of the page's hash and half of that of what is made of it: one hash for all that is made of a page. */
    private Optional<Key> key(String what, Leaf leaf) {
        Optional<String> kind = kind(what);
        return binding.of(leaf).flatMap(page -> kind.map(of -> new Key(page.substring(0, HALF)
                + of.substring(0, HALF), List.of(), Set.of())));
    }

    private Optional<String> kind(String what) {
        return kinds.computeIfAbsent(what, first -> binding.hash("page", what, form.getClass().getName(),
                form.gated()));
    }
}
