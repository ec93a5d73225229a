package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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

    /** A Java machine of its own on what the tests see; {@code options} come before the class. */
    public static ProcessBuilder machine(List<String> options, Class<?> main, String... arguments) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Djava.awt.headless=true", "-cp",
                System.getProperty("java.class.path")));
        command.addAll(options);
        command.add(main.getName());
        command.addAll(List.of(arguments));
        return new ProcessBuilder(command);
    }

    /** Runs a program to its end, for a minute at most. */
    public static Said run(String... command) throws IOException, InterruptedException {
        return run(new ProcessBuilder(command));
    }

    /** The same, with an environment or a folder of its own. */
    public static Said run(ProcessBuilder program) throws IOException, InterruptedException {
        Process process = program.redirectErrorStream(true).start();
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(1, TimeUnit.MINUTES), "still running: " + program.command());
        return new Said(process.exitValue(), text);
    }
}
