package org.fieldfold.trace;

import java.nio.BufferUnderflowException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fieldfold.entry.ContentBase;

/**
 * What was made of a base, from one state of it to the next. Each result is made of a base that notes what is
 * read of it, and is taken again as long as all of that was read from the same bytes of the same files.
 */
public final class KeptResults<T> {
    private volatile Last<T> last = new Last<>(Optional.empty(), Map.of());

    /** The state in which the results are right. */
    private record Last<T>(Optional<BaseState> state, Map<String, Result<T>> results) {
    }

    private record Result<T>(String of, T made, Trace trace) {
    }

    /** How one result is written down. */
    public interface Form<T> {
        void write(T made, ResultWriter out);

        /** Empty for one that can no longer be read: it is made again. */
        Optional<T> read(ResultReader in);
    }

    /** The results of the last round, for another process. */
    public byte[] bytes(Form<T> form) {
        ResultWriter out = new ResultWriter();
        Last<T> now = last;
        out.number(now.state().isPresent() ? 1 : 0);
        now.state().ifPresent(state -> state.write(out));
        out.number(now.results().size());
        now.results().forEach((name, result) -> {
            out.text(name);
            out.text(result.of());
            result.trace().write(out);
            form.write(result.made(), out);
        });
        return out.bytes();
    }

    /**
     * Goes on where another process was, if the bytes are of the form that this program writes; else nothing is known.
     */
    public void goOn(byte[] bytes, Form<T> form) {
        last = new Last<>(Optional.empty(), Map.of());
        try {
            ResultReader in = new ResultReader(bytes);
            Optional<BaseState> state = in.number() == 1 ? Optional.of(BaseState.read(in)) : Optional.empty();
            Map<String, Result<T>> results = new HashMap<>();
            for (int left = in.count(); left > 0; left--) {
                String name = in.text();
                String of = in.text();
                Trace trace = Trace.read(in);
                form.read(in).ifPresent(made -> results.put(name, new Result<>(of, made, trace)));
            }
            last = new Last<>(state, results);
        } catch (BufferUnderflowException | IllegalArgumentException otherForm) {
            return;
        }
    }

    /**
     * Begins with a base as it is now.
     *
     * @param hashes of the files that it was read from, by path; a record from any other file is never the same
     */
    public Round round(ContentBase base, Map<String, String> hashes) {
        return new Round(base, BaseState.of(base, hashes), last);
    }

    /**
     * The same with a base in another language.
     *
     * @param said the base in the language, in whatever order
     * @param base as it was written
     * @param texts of each record the file in which its translated texts stand
     */
    public Round round(ContentBase said, ContentBase base, String language, TranslatedTexts texts,
            Map<String, String> hashes) {
        return new Round(said, BaseState.of(base, hashes).in(said, language, texts), last);
    }

    /** The results for one state of the base. Several threads may ask for different ones. */
    public final class Round {
        private final ContentBase base;
        private final BaseState state;
        private final Changes changes;
        private final Map<String, Result<T>> before;
        private final Map<String, Result<T>> now = new ConcurrentHashMap<>();

        private Round(ContentBase base, BaseState state, Last<T> last) {
            this.base = base;
            this.state = state;
            this.changes = last.state().map(state::since).orElse(Changes.EVERYTHING);
            this.before = last.results();
        }

        /**
         * A result.
         *
         * @param name that no other result of this round has
         * @param of what else it is made of
         * @param make makes it of the base that it is given, of {@code of}, and of nothing else that may change;
         *     it reads the base while it runs and not later
         */
        public T take(String name, String of, Function<ContentBase, T> make) {
            return take(name, of, List.of(), make);
        }

        /**
         * The same of a result that is made of others as well.
         *
         * @param others names of those that were taken before; when one was made again, so is this one
         */
        public T take(String name, String of, List<String> others, Function<ContentBase, T> make) {
            Result<T> known = before.get(name);
            if (known == null || !known.of().equals(of) || !others.stream().allMatch(this::isKept)
                    || known.trace().meets(changes)) {
                Trace trace = new Trace();
                known = new Result<>(of, make.apply(WatchedBase.of(base, trace)), trace);
            }
            now.put(name, known);
            return known.made();
        }

        /** Whether a result was taken, and is that of the round before. */
        private boolean isKept(String name) {
            return now.containsKey(name) && now.get(name) == before.get(name);
        }

        /** The names of results that were made, and not known before. */
        public Set<String> made() {
            return now.keySet().stream().filter(name -> !isKept(name)).collect(Collectors.toCollection(TreeSet::new));
        }

        /** Whether all results so far were kept, and none has gone. */
        public boolean isAsBefore() {
            return now.keySet().equals(before.keySet()) && made().isEmpty();
        }

        /** Ends it: what was not asked for is forgotten. Without this the next round begins where this one did. */
        public void end() {
            last = new Last<>(Optional.of(state), now);
        }
    }
}
