package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every input that a fuzzer kept is read again, by the target that its folder is named after. */
class FuzzReplayTest {
    private static final Duration LONGEST = Duration.ofSeconds(60);
    /** Everything that is made while an input is read; far more than is held at once. */
    private static final long MOST_BYTES = 256L << 20;
    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    @ParameterizedTest
    @EnumSource
    void keptInputsHoldInBoundedTimeAndMemory(FuzzTarget target) throws IOException {
        target.read(new byte[0]);
        for (Path kept : target.kept()) {
            byte[] input = Files.readAllBytes(kept);
            long made = assertTimeoutPreemptively(LONGEST, () -> {
                long before = THREADS.getThreadAllocatedBytes(Thread.currentThread().getId());
                target.read(input);
                return THREADS.getThreadAllocatedBytes(Thread.currentThread().getId()) - before;
            }, () -> kept + " takes too long");
            assertTrue(made < MOST_BYTES, () -> kept + " made " + (made >> 20) + " MiB");
        }
    }

    @Test
    void noInputIsKeptThatNobodyReads() throws IOException {
        Set<Path> read = new TreeSet<>();
        for (FuzzTarget target : FuzzTarget.values()) {
            List<Path> kept = target.kept();
            assertFalse(kept.isEmpty(), target + " has no inputs in " + target.folder());
            read.addAll(kept);
        }
        try (Stream<Path> all = Files.walk(FuzzTarget.KEPT)) {
            assertEquals(all.filter(Files::isRegularFile).collect(Collectors.toCollection(TreeSet::new)), read);
        }
    }

    /** What stands in a name before the first hyphen: what the input once did. */
    @Test
    void namesSayWhatBroke() {
        Set<String> known = Set.of("seed", "crash", "endless", "blank", "elsewhere", "accepted");
        List<Path> others = new ArrayList<>(Arrays.stream(FuzzTarget.values()).flatMap(target -> target.kept().stream())
                .toList());
        others.removeIf(path -> known.contains(path.getFileName().toString().replaceFirst("-.*", "")));
        assertEquals(List.of(), others);
    }
}
