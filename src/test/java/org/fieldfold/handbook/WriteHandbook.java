package org.fieldfold.handbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.check.Rulebook;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.edition.Rereadings;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.manuscript.Phrases;

/**
 * Writes the shipped handbook into a folder, to be looked at: arguments are the folder, and how often to time
 * it.
 */
final class WriteHandbook {
    private WriteHandbook() {
    }

    private static long processor() {
        return java.lang.management.ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    public static void main(String[] args) throws IOException {
        ContentBase base = BaseLoader.load(Path.of("content")).base().orElseThrow();
        Phrases phrases = Phrases.in("en");
        for (int i = 0; i < (args.length > 1 ? Integer.parseInt(args[1]) : 1); i++) {
            long start = processor();
            var files = Handbook.write(base, phrases, false);
            System.out.printf("%d files, %d ms of processor time%n", files.size(),
                    (processor() - start) / 1_000_000);
            List<HandbookFile> all = new ArrayList<>(files);
            all.add(new HandbookFile("review/index.html", ReviewPage.write(base,
                    Rereadings.of(base, Optional.empty()), Rulebook.check(base, base.edition().value().issued()),
                    List.of(), false)));
            for (HandbookFile file : all) {
                Path path = Path.of(args[0], file.path());
                Files.createDirectories(path.getParent());
                Files.write(path, file.bytes());
            }
        }
    }
}
