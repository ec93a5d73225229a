package org.fieldfold.preview;

import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/** The pages that are open, and what each of them shows; each waits on a thread of its own. */
final class EventStreams {
    static final int MOST = 24;

    private final Set<Stream> open = ConcurrentHashMap.newKeySet();
    private final AtomicInteger places = new AtomicInteger(MOST);

    /** One open page. */
    static final class Stream {
        private final String subject;
        private long told;
        private long latest;
        private boolean ended;

        private Stream(String subject) {
            this.subject = subject;
        }

        /**
         * Waits for news.
         *
         * @return the version to tell of; 0 when there was none for as long as that, -1 at the end
         */
        synchronized long next(long seconds) throws InterruptedException {
            long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
            while (!ended && latest == told) {
                long left = TimeUnit.NANOSECONDS.toMillis(until - System.nanoTime());
                if (left <= 0) {
                    return 0;
                }
                wait(left);
            }
            told = latest;
            return ended ? -1 : told;
        }

        private synchronized void tell(long version) {
            latest = version;
            notifyAll();
        }

        private synchronized void end() {
            ended = true;
            notifyAll();
        }
    }

    /** Whether there is room for one more; whoever took a place gives it back. */
    boolean takePlace() {
        if (places.decrementAndGet() >= 0) {
            return true;
        }
        places.incrementAndGet();
        return false;
    }

    void giveBack() {
        places.incrementAndGet();
    }

    Stream open(String subject) {
        Stream stream = new Stream(subject);
        open.add(stream);
        return stream;
    }

    void close(Stream stream) {
        open.remove(stream);
    }

    /** What the open pages show. */
    Set<String> subjects() {
        Set<String> subjects = new TreeSet<>();
        open.forEach(stream -> subjects.add(stream.subject));
        return subjects;
    }

    void tell(long version) {
        open.forEach(stream -> stream.tell(version));
    }

    void end() {
        open.forEach(Stream::end);
    }
}
