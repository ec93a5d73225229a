package org.fieldfold.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.fieldfold.Compiler;
import org.fieldfold.WholeFile;
import org.fieldfold.content.Draft;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code draft}: a new file with everything that it needs. */
@Command(name = "draft", mixinStandardHelpOptions = true,
        description = "Writes a new file with every needed key and what it means. 'check' then says what is "
            + "still to be filled in. A file that exists is never touched.",
        footer = {"", "draft translation LANGUAGE [FILE] writes or brings up to date the files in which texts "
            + "are translated: base text beside, translations kept, what is missing or due marked TO DO."})
final class DraftCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(index = "0", paramLabel = "KIND",
            description = "pest, natural-enemy, practice, guide, office or translation")
    private String kind;

    @Parameters(index = "1", paramLabel = "ID", description = "the new file's name, as in leek-moth; "
            + "for a translation the language, as in es")
    private String id;

    @Parameters(index = "2", arity = "0..1", paramLabel = "FILE", description = "for a translation: the "
            + "file whose texts are translated, as in pests/leek-moth; leave out for all")
    private Optional<String> translated = Optional.empty();

    @Option(names = "--short", description = "only the keys that every file of its kind needs")
    private boolean brief;

    @Option(names = "--content", paramLabel = "DIR", defaultValue = "content",
            description = "the content base (default: ${DEFAULT-VALUE})")
    private Path content;

    DraftCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        if (kind.equals("translation")) {
            return translation();
        }
        Draft draft;
        try {
            draft = Compiler.draft(kind, id, brief);
        } catch (IllegalArgumentException wrong) {
            terminal.err().println("fieldfold: " + wrong.getMessage());
            return 2;
        }
        Path file = content.resolve(draft.path());
        if (Files.exists(file)) {
            terminal.err().println("fieldfold: expected a new id, found that " + file + " exists");
            return 2;
        }
        WholeFile.write(file, draft.text().getBytes(StandardCharsets.UTF_8));
        terminal.out().println(file);
        next().forEach(terminal.out()::println);
        return 0;
    }

    /** What comes after the draft, in its order. */
    private List<String> next() {
        String fill = "  1. fill in what is empty; 'fieldfold check " + id + "' says what is left";
        return switch (kind) {
            case "pest" -> List.of(fill,
                    "  2. list " + id + " under 'entries:' of a guide in " + content.resolve("guides")
                            + ", or it is on no foldout",
                    "  3. re-read it: 'fieldfold sign " + id + " --by REVIEWER', one of edition.yaml",
                    "  4. 'fieldfold compile' prints it");
            case "natural-enemy", "practice" -> List.of(fill,
                    "  2. re-read it: 'fieldfold sign " + id + " --by REVIEWER', one of edition.yaml");
            default -> List.of(fill, "  2. 'fieldfold compile' prints it");
        };
    }

    private int translation() throws IOException {
        List<Draft> drafts;
        try {
            drafts = Compiler.translations(content, id, translated);
        } catch (IllegalArgumentException wrong) {
            terminal.err().println("fieldfold: " + wrong.getMessage());
            return 2;
        }
        for (Draft draft : drafts) {
            Path file = content.resolve(draft.path());
            if (!Files.exists(file) || !Files.readString(file).equals(draft.text())) {
                WholeFile.write(file, draft.text().getBytes(StandardCharsets.UTF_8));
                terminal.out().println(file);
            }
        }
        return 0;
    }
}
