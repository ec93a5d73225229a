package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;

/**
 * Programs from outside that judge what was built. A program that is missing leaves the test out, and says
 * so; with {@code FIELDFOLD_REQUIRE_TOOLS} set, as on a machine that lands changes, it is a failure.
 */
public final class Outside {
    /** What a program printed, and how it ended. */
    public record Said(int status, String text) {
    }

    private Outside() {
    }

    /** Leaves the test out, or fails it, when {@code tool} cannot be started. */
    public static void need(String tool) {
        boolean there;
        try {
            there = new ProcessBuilder("sh", "-c", "command -v " + tool).start().waitFor() == 0;
        } catch (IOException unable) {
            there = false;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            there = false;
        }
        if (System.getenv("FIELDFOLD_REQUIRE_TOOLS") != null) {
            assertTrue(there, tool + " is not on this machine; install it from the system's packages");
        }
        assumeTrue(there, "left out: " + tool + " is not on this machine");
    }

    /** Runs a program to its end, for a minute at most. */
    public static Said run(String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(1, TimeUnit.MINUTES), "still running: " + Arrays.toString(command));
        return new Said(process.exitValue(), text);
    }
}
