package org.fieldfold.content;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.source.Finding;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;

/** The folder of a content base: which files in it are read, and what is said about the others. */
final class Folder {
    static final int MOST_FILES = 20_000;
    private static final List<String> BESIDE = List.of("README.md", "README.txt", "LICENSE");

    private final Path root;
    private final Path realRoot;
    private final String name;
    private final List<ContentFile> files = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private int seen;

    /** @throws IOException when the folder is not there or cannot be listed */
    Folder(Path root) throws IOException {
        if (!Files.isDirectory(root)) {
            throw new NotDirectoryException(root.toString());
        }
        this.root = root;
        this.realRoot = root.toRealPath();
        Path last = root.toAbsolutePath().normalize().getFileName();
        this.name = last == null ? "content" : last.toString();
        for (Path entry : list(root)) {
            String file = entry.getFileName().toString();
            if (file.startsWith(".") || BESIDE.contains(file)) {
                continue;
            }
            if (Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS)) {
                folder(entry, file);
            } else {
                file(entry, "", file);
            }
        }
        collisions();
    }

    List<ContentFile> files() {
        return files;
    }

    List<Finding> findings() {
        return findings;
    }

    /** How a file of the base is shown. */
    String shown(String relative) {
        return name + "/" + relative;
    }

    private static List<Path> list(Path folder) throws IOException {
        List<Path> entries = new ArrayList<>();
        try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder)) {
            stream.forEach(entries::add);
        }
        entries.sort(Comparator.comparing(entry -> entry.getFileName().toString()));
        return entries;
    }

    private void folder(Path folder, String folderName) throws IOException {
        if (folderName.matches("[a-z]{2}")) {
            language(folder, folderName);
            return;
        }
        if (!FileKind.folders().contains(folderName)) {
            unexpected(folderName, "expected one of the folders " + String.join(", ", FileKind.folders())
                    + " or that of a language, as in es, found '" + folderName + "'",
                    Nearest.hint(folderName, FileKind.folders(), "what is in it is not read"));
            return;
        }
        for (Path entry : list(folder)) {
            String file = entry.getFileName().toString();
            if (!file.startsWith(".") && !BESIDE.contains(file)) {
                file(entry, folderName, file);
            }
        }
    }

    /** Texts in another language: every folder may hold .yaml files, whatever the base holds there. */
    private void language(Path folder, String relative) throws IOException {
        for (Path entry : list(folder)) {
            String file = entry.getFileName().toString();
            String path = relative + "/" + file;
            if (file.startsWith(".") || BESIDE.contains(file)) {
                continue;
            }
            if (!Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS)) {
                boolean read = file.endsWith(".yaml") && ScalarReading.isId(file.replaceFirst("\\.yaml$", ""));
                file(entry, path, read ? Optional.of(FileKind.TRANSLATION) : Optional.empty(),
                        path.replaceFirst("\\.yaml$", ""), List.of(".yaml"));
            } else if (relative.indexOf('/') < 0 && FileKind.folders().contains(file)) {
                language(entry, path);
            } else {
                unexpected(path, "expected one of the folders " + String.join(", ", FileKind.folders())
                        + ", found '" + file + "'", "what is in it is not read");
            }
        }
    }

    private void file(Path entry, String folder, String file) throws IOException {
        Optional<FileKind> kind = FileKind.of(folder, file);
        file(entry, folder.isEmpty() ? file : folder + "/" + file, kind,
                kind.map(known -> known.id(file)).orElse(""), FileKind.endings(folder));
    }

    private void file(Path entry, String relative, Optional<FileKind> kind, String id, List<String> endings)
            throws IOException {
        String file = entry.getFileName().toString();
        if (++seen > MOST_FILES) {
            if (seen == MOST_FILES + 1) {
                findings.add(FormRule.TOO_MANY_FILES.at(start(relative), "expected at most " + MOST_FILES
                        + " files, found more", "split the content base"));
            }
            return;
        }
        if (Files.isSymbolicLink(entry) && !staysInside(entry)) {
            findings.add(FormRule.LINK_LEAVES_FOLDER.at(start(relative),
                    "expected a file, found a link that leads to no file in the content base",
                    "put the file itself in its place"));
            return;
        }
        if (kind.isEmpty() || !Files.isRegularFile(entry)) {
            boolean root = relative.equals(file);
            unexpected(relative, "expected " + (root ? "one of the files " : "a file ending in ")
                    + String.join(", ", endings) + ", found '" + file + "'",
                    root ? Nearest.hint(file, endings, "it is not read") : "it is not read");
            return;
        }
        if (kind.get() != FileKind.TRANSLATION && !ScalarReading.isId(id)) {
            findings.add(FormRule.BAD_ID.at(start(relative),
                    "expected a file name of lower-case letters, digits and hyphens, found '" + file + "'",
                    "rename the file as in 'colorado-potato-beetle.yaml'; it is not read under this name"));
            return;
        }
        files.add(new ContentFile(shown(relative), entry, kind.get(), id));
    }

    private boolean staysInside(Path link) {
        try {
            return link.toRealPath().startsWith(realRoot) && Files.isRegularFile(link);
        } catch (IOException e) {
            return false;
        }
    }

    private void unexpected(String relative, String message, String hint) {
        findings.add(FormRule.UNEXPECTED_FILE.at(start(relative), message, hint));
    }

    private Span start(String relative) {
        return Span.startOf(new SourceFile(shown(relative), ""));
    }

    /** Two images of one id; ids that differ only in capitals are caught as file names already. */
    private void collisions() {
        Map<String, String> images = new HashMap<>();
        for (ContentFile file : files) {
            String first = file.kind().isImage() ? images.putIfAbsent(file.id(), file.path()) : null;
            if (first != null) {
                findings.add(FormRule.COLLIDING_ID.at(Span.startOf(new SourceFile(file.path(), "")),
                        "expected one image of the id '" + file.id() + "', found this one beside " + first,
                        "keep one of the two, or rename one with its note"));
            }
        }
    }

    @Override
    public String toString() {
        return root.toString();
    }
}
