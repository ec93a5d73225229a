package org.fieldfold.trace;

import java.nio.BufferUnderflowException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
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

    private record Result<T>(Object of, T made, Trace trace) {
    }

    /** How one result is written down. */
    public interface Form<T> {
        void write(T made, ResultWriter out);

        /** Empty for one that can no longer be read: it is made again. */
        Optional<T> read(ResultReader in);
    }

    /**
     * The results of the last round, for another process.
     *
     * @param of what all these results are made of besides the base
     */
    public byte[] bytes(Object of, Form<T> form) {
        ResultWriter out = new ResultWriter();
        Last<T> now = last;
        out.text(of.toString());
        out.number(now.state().isPresent() ? 1 : 0);
        now.state().ifPresent(state -> state.write(out));
        out.number(now.results().size());
        now.results().forEach((name, result) -> {
            out.text(name);
            result.trace().write(out);
            form.write(result.made(), out);
        });
        return out.bytes();
    }

    /**
     * Goes on where another process was, if it made its results of the same and the bytes are of the form that
     * this program writes; otherwise nothing is known.
     *
     * @param of what results are made of besides the base
     */
    public void goOn(byte[] bytes, Object of, Form<T> form) {
        last = new Last<>(Optional.empty(), Map.of());
        try {
            ResultReader in = new ResultReader(bytes);
            if (!in.text().equals(of.toString())) {
                return;
            }
            Optional<BaseState> state = in.number() == 1 ? Optional.of(BaseState.read(in)) : Optional.empty();
            Map<String, Result<T>> results = new HashMap<>();
            for (int left = in.count(); left > 0; left--) {
                String name = in.text();
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
         * @param of what else it is made of, compared by {@code equals}
         * @param make makes it of the base that it is given, of {@code of}, and of nothing else that may change;
         *     it reads the base while it runs and not later
         */
        public T take(String name, Object of, Function<ContentBase, T> make) {
            Result<T> known = before.get(name);
            if (known == null || !known.of().equals(of) || known.trace().meets(changes)) {
                Trace trace = new Trace();
                known = new Result<>(of, make.apply(WatchedBase.of(base, trace)), trace);
            }
            now.put(name, known);
            return known.made();
        }

        /** Ends it: what was not asked for is forgotten. Without this the next round begins where this one did. */
        public void end() {
            last = new Last<>(Optional.of(state), now);
        }
    }
}
