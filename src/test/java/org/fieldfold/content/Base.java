package org.fieldfold.content;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.fieldfold.source.Finding;

/** A small content base in a folder of its own, for tests to put files into. */
final class Base {
    static final String EDITION = """
            year: 2027
            title: Pocket guides
            publisher: An invented service
            issued: 2027-01-15
            valid-from: 2027-02-01
            valid-until: 2028-01-31
            max-age-months: 15
            languages: [en]
            handbook: https://handbook.example/2027
            contact: {phone: 555-0100, email: office@service.example, hours: always}
            reviewers:
              - {id: avery, name: Avery Thornquist, role: vegetables}
            """;

    private final Path folder;

    Base(Path temporary) {
        this.folder = temporary.resolve("content");
        with("edition.yaml", EDITION);
    }

    Path folder() {
        return folder;
    }

    Base with(String path, String text) {
        return with(path, text.getBytes(StandardCharsets.UTF_8));
    }

    Base with(String path, byte[] bytes) {
        try {
            Path file = folder.resolve(path);
            Files.createDirectories(file.getParent());
            Files.write(file, bytes);
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    LoadedBase load() {
        try {
            return BaseLoader.load(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** As {@code place: severity: message [rule]} and the hint, one a finding. */
    List<String> findings() {
        return load().findings().stream().map(Base::shown).toList();
    }

    static String shown(Finding finding) {
        return finding.span().place() + ": " + finding.severity().word() + ": " + finding.message() + " ["
                + finding.rule() + "] hint: " + finding.hint();
    }
}
