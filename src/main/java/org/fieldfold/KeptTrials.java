package org.fieldfold;

import java.nio.ByteBuffer;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.fieldfold.kept.Kept;
import org.fieldfold.kept.Key;
import org.fieldfold.manuscript.Section;
import org.fieldfold.typeset.Trial;
import org.fieldfold.typeset.Trials;

/**
 * The trials of one guide in one language on one paper in one manner: all in one kept result, each found by a hash
 * of all that it asks. What is not asked again when the guide is set is dropped after a while. Several threads may
 * use it.
 */
final class KeptTrials implements Trials {
    private static final int ENTRY = Hash.BYTES + Long.BYTES + 1;
    /** As often may the guide be set without asking for an answer before that is dropped. */
    private static final int OLDEST = 3;

    private final Kept kept;
    private final Optional<Key> key;
    private final Map<Hash, Long> asked = new ConcurrentHashMap<>();
    private final AtomicInteger answered = new AtomicInteger();
    private final AtomicInteger learnt = new AtomicInteger();
    private int left;
    private Optional<Map<Hash, Answer>> earlier = Optional.empty();

    /** Half of a SHA-256. */
    private record Hash(long high, long low) {
        static final int BYTES = 2 * Long.BYTES;

        static Hash of(byte[] sha256) {
            ByteBuffer bytes = ByteBuffer.wrap(sha256);
            return new Hash(bytes.getLong(), bytes.getLong());
        }
    }

    /** @param age how often the guide was set since without it */
    private record Answer(long value, int age) {
    }

    /** @param key that says whose they are */
    KeptTrials(Kept kept, Optional<Key> key) {
        this.kept = kept;
        this.key = key;
    }

    @Override
    public Optional<String> name(Section section) {
        return key.flatMap(one -> kept.hash(section)).map(hash -> HexFormat.of().formatHex(hash, 0, Hash.BYTES));
    }

    @Override
    public OptionalLong answer(Trial trial) {
        return hash(trial).map(hash -> {
            OptionalLong known = known(hash);
            known.ifPresent(answer -> {
                asked.put(hash, answer);
                answered.incrementAndGet();
            });
            return known;
        }).orElseGet(OptionalLong::empty);
    }

    @Override
    public void learn(Trial trial, long answer) {
        hash(trial).ifPresent(hash -> {
            asked.put(hash, answer);
            learnt.incrementAndGet();
        });
    }

    /** The same for copies of offices, which ask and learn nothing: what is kept does not grow with them. */
    Trials reading() {
        return new Trials() {
            @Override
            public Optional<String> name(Section section) {
                return KeptTrials.this.name(section);
            }

            @Override
            public OptionalLong answer(Trial trial) {
                return hash(trial).map(hash -> known(hash)).orElseGet(OptionalLong::empty);
            }

            @Override
            public void learn(Trial trial, long answer) {
                // another office asks something else
            }
        };
    }

    private OptionalLong known(Hash hash) {
        Long known = asked.get(hash);
        Answer before = known == null ? earlier().get(hash) : null;
        return known != null ? OptionalLong.of(known)
                : before == null ? OptionalLong.empty() : OptionalLong.of(before.value());
    }

    private Optional<Hash> hash(Trial trial) {
        return kept.hash((Record) trial).map(Hash::of);
    }

    private synchronized Map<Hash, Answer> earlier() {
        if (earlier.isEmpty()) {
            earlier = Optional.of(kept.left(key).map(KeptTrials::read).orElseGet(Map::of));
        }
        return earlier.get();
    }

    private static Map<Hash, Answer> read(byte[] bytes) {
        Map<Hash, Answer> read = new HashMap<>();
        ByteBuffer rest = ByteBuffer.wrap(bytes);
        while (rest.remaining() >= ENTRY) {
            read.put(new Hash(rest.getLong(), rest.getLong()), new Answer(rest.getLong(), rest.get()));
        }
        return read;
    }

    /** How often an answer was known. */
    int answered() {
        return answered.get();
    }

    /** How many trials were made. */
    int learnt() {
        return learnt.get();
    }

    /** Leaves what this build asked for later ones, if any of it is new. */
    synchronized void leave() {
        if (learnt() > left) {
            left = learnt();
            Map<Hash, Answer> all = new HashMap<>();
            earlier().forEach((hash, answer) -> all.put(hash, new Answer(answer.value(), answer.age() + 1)));
            all.values().removeIf(answer -> answer.age() > OLDEST);
            asked.forEach((hash, answer) -> all.put(hash, new Answer(answer, 0)));
            ByteBuffer bytes = ByteBuffer.allocate(all.size() * ENTRY);
            all.forEach((hash, answer) -> bytes.putLong(hash.high()).putLong(hash.low()).putLong(answer.value())
                    .put((byte) answer.age()));
            kept.leave(key, bytes.array());
        }
    }
}
