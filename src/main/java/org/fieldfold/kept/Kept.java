package org.fieldfold.kept;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * Results of earlier builds, for one build: asked for a result it takes the one that was made of the very
 * same things by the very same program, or has it made and keeps it. Several threads may use it.
 */
public final class Kept {
    /** Builds of which the results are kept: one may go back and forth between two states of a base. */
    private static final int BUILDS = 3;

    private final Optional<Store> store;
    private final String program;
    private final Hashing hashing;
    private final Set<String> used;
    private final AtomicInteger made = new AtomicInteger();
    private final AtomicInteger taken = new AtomicInteger();

    private Kept(Optional<Store> store, String program, Hashing hashing, Set<String> used) {
        this.store = store;
        this.program = program;
        this.hashing = hashing;
        this.used = used;
    }

    /** Keeps nothing: everything is made. */
    public static Kept nothing() {
        return new Kept(Optional.empty(), "", new Hashing(Map.of(), Set.of()),
                new ConcurrentSkipListSet<>());
    }

    /**
     * Keeps results in a folder.
     *
     * @param program what tells this program from all others, see {@link Program}
     */
    public static Kept in(Path folder, String program) {
        return new Kept(Optional.of(new Store(folder)), program, new Hashing(Map.of(), Set.of()),
                new ConcurrentSkipListSet<>());
    }

    /**
     * The same, for the same build, of trees in which things are spoken of by name.
     *
     * @param hashesByName of such things, as figures are: each one's hash is part of what is made of anything
     *     that names it
     * @param shared records that stand in many trees as the same object
     */
    public Kept naming(Map<String, String> hashesByName, Set<Class<?>> shared) {
        return new Kept(store, program, new Hashing(hashesByName, shared), used);
    }

    /** Whether anything is kept at all. */
    public boolean isKeeping() {
        return store.isPresent();
    }

    /** What the parts amount to: records, lists, texts and numbers; empty when nothing is kept. */
    public Optional<Key> key(Object... parts) {
        if (store.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(hashing.key(program, parts.length, List.of(parts)));
        } catch (IllegalArgumentException formless) {
            return Optional.empty();
        }
    }

    /**
     * What one record amounts to, for those who keep many small answers in one result: a SHA-256, without the order
     * of places. Empty when nothing is kept.
     */
    public Optional<byte[]> hash(Record part) {
        try {
            return store.map(place -> hashing.hash(part));
        } catch (IllegalArgumentException formless) {
            return Optional.empty();
        }
    }

    /**
     * The bytes that are made of what the key stands for.
     *
     * @param make makes them of that and of nothing else
     */
    public byte[] bytes(Optional<Key> key, Supplier<byte[]> make) {
        Optional<byte[]> found = key.flatMap(this::find);
        if (found.isPresent()) {
            return found.get();
        }
        made.incrementAndGet();
        byte[] fresh = make.get();
        key.ifPresent(one -> store.ifPresent(place -> place.put(one.hash(), fresh)));
        return fresh;
    }

    /**
     * What an earlier build left under a key that says whose it is, and not what it was made of; whether it
     * still holds is for the reader to see from what stands in it.
     */
    public Optional<byte[]> left(Optional<Key> key) {
        key.ifPresent(one -> used.add(one.hash()));
        return key.flatMap(one -> store.flatMap(place -> place.get(one.hash())));
    }

    /** Leaves something for later builds, in the place of what was there. */
    public void leave(Optional<Key> key, byte[] bytes) {
        key.ifPresent(one -> store.ifPresent(place -> place.put(one.hash(), bytes)));
    }

    /**
     * The record that is made of what the key stands for; its places are among those of the key.
     */
    public <T extends Record> T value(Optional<Key> key, Class<T> type, Supplier<T> make) {
        return value(key, type, known -> true, make);
    }

    /**
     * The same of what the key stands for and of something more, of which the record tells.
     *
     * @param holds whether that is still as the record tells it
     */
    public <T extends Record> T value(Optional<Key> key, Class<T> type, Predicate<T> holds, Supplier<T> make) {
        return renewed(key, type, known -> known.filter(holds).orElseGet(make));
    }

    /**
     * The same of what may be brought up to date.
     *
     * @param renew what it is now, of what is known if anything is: that very record where it still holds
     */
    public <T extends Record> T renewed(Optional<Key> key, Class<T> type, Function<Optional<T>, T> renew) {
        Optional<T> known = key.flatMap(one -> store.flatMap(place -> place.getSmall(one.hash()))
                .flatMap(bytes -> read(new Values(one), bytes, type)));
        T now = renew.apply(known);
        key.ifPresent(one -> {
            used.add(one.hash());
            if (known.isEmpty() || known.get() != now) {
                write(new Values(one), now).ifPresent(bytes -> store.ifPresent(place ->
                        place.putSmall(one.hash(), bytes)));
            }
        });
        return now;
    }

    /**
     * What a build said of itself, for a later one that finds the same files: places in it are those of then.
     * Empty when nothing was said under this key.
     */
    public <T extends Record> Optional<T> recall(Optional<Key> key, Class<T> type) {
        return key.flatMap(one -> store.flatMap(place -> place.get(one.hash()))).flatMap(bytes ->
                read(new Values(), bytes, type));
    }

    /** Says something for {@link #recall}. */
    public void say(Optional<Key> key, Record value) {
        key.ifPresent(one -> write(new Values(), value).ifPresent(bytes -> {
            used.add(one.hash());
            store.ifPresent(place -> place.put(one.hash(), bytes));
        }));
    }

    /** Says that what stands under a key is in use, though nobody had to ask for it. */
    public void use(Key key) {
        used.add(key.hash());
    }

    private Optional<byte[]> find(Key key) {
        used.add(key.hash());
        Optional<byte[]> found = store.flatMap(place -> place.get(key.hash()));
        found.ifPresent(bytes -> taken.incrementAndGet());
        return found;
    }

    private static <T extends Record> Optional<T> read(Values form, byte[] bytes,
            Class<T> type) {
        try {
            return Optional.of(form.read(bytes, type));
        } catch (IOException | RuntimeException otherForm) {
            return Optional.empty();
        }
    }

    private static Optional<byte[]> write(Values form, Record value) {
        try {
            return Optional.of(form.write(value));
        } catch (IOException formless) {
            // it is made again next time
            return Optional.empty();
        }
    }

    /** Files that were made. */
    public int made() {
        return made.get();
    }

    /** Files that were taken from an earlier build. */
    public int taken() {
        return taken.get();
    }

    /** Writes down what is new; for a build that comes to nothing. */
    public void save() {
        store.ifPresent(Store::save);
    }

    /** Drops what the last builds did not use; for the end of a build that went well. */
    public void tidy() {
        store.ifPresent(place -> place.keepOnly(used, BUILDS));
    }
}
