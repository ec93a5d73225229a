package org.fieldfold.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.fieldfold.output.Manifest;
import org.fieldfold.output.OutputFolder;

/** A process that goes on writing until somebody kills it, and says a line after each thing it did. */
public final class Tireless {
    private Tireless() {
    }

    public static void main(String[] args) throws IOException, InterruptedException {
        if (args[0].equals("hold")) {
            try (OutputFolder held = OutputFolder.open(Path.of(args[1]), "2027")) {
                System.out.println("held");
                Thread.sleep(60_000);
            }
        }
        for (int round = 1;; round++) {
            if (args[0].equals("publish")) {
                publish(Path.of(args[1]), round);
                System.out.println("done");
            } else {
                commands(args[1], args[2], round);
            }
        }
    }

    /** A build of small files, each of which says in which round it was written. */
    static void publish(Path parent, int round) throws IOException {
        try (OutputFolder folder = OutputFolder.open(parent, "2027")) {
            for (int file = 0; file < 12; file++) {
                folder.write("part-" + file % 3 + "/" + file + ".txt",
                        ("round " + round).repeat(2_000).getBytes(StandardCharsets.UTF_8));
            }
            folder.write("manifest.json", new Manifest(2027, "test", false, List.of(), folder.files())
                    .json().getBytes(StandardCharsets.UTF_8));
            folder.publish();
        }
    }

    /** What a specialist does over and over: sign, bring in a table, build. */
    private static void commands(String content, String out, int round) throws IOException {
        String value = round % 2 == 0 ? "25" : "30";
        Path table = Path.of(content).resolveSibling("thresholds.csv");
        run("sign", "potato-beetle", "--by", "rowan", "--content", content);
        run("table", "export", "thresholds", "--to", table.toString(), "--content", content);
        Files.writeString(table, Files.readString(table).replaceFirst(",(25|30),50,", "," + value + ",50,"));
        run("table", "import", "thresholds", table.toString(), "--apply", "--content", content);
        run("compile", "--content", content, "--out", out);
    }

    private static void run(String... command) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = CommandLineTool.run(command, new Terminal(
                new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8), false, () -> 0, () -> LocalDate.of(2027, 12, 1)));
        System.out.println(status == 0 ? "done" : String.join(" ", command) + ": "
                + err.toString(StandardCharsets.UTF_8));
    }
}
