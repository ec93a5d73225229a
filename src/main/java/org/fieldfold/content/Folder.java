package org.fieldfold.content;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fieldfold.source.Finding;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;

/** The folder of a content base: which files in it are read, and what is said about the others. */
final class Folder {
    static final int MOST_FILES = 20_000;
    /** All files together; everything that is read is in memory at once. */
    static final long MOST_BYTES = 256L << 20;
    /** What texts call by its id, whichever of these it is. */
    private static final Set<FileKind> ENTRIES = EnumSet.of(FileKind.PEST, FileKind.NATURAL_ENEMY,
            FileKind.PRACTICE, FileKind.CHAPTER);
    private static final List<String> BESIDE = List.of("README.md", "README.txt", "LICENSE");

    private final Path root;
    private final Path realRoot;
    private final String name;
    private final List<ContentFile> files = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private int seen;
    private long bytes;

    /** @throws IOException when the folder is not there or cannot be listed */
    Folder(Path root) throws IOException {
        if (!Files.isDirectory(root)) {
            throw new NotDirectoryException(root.toString());
        }
        this.root = root;
        this.realRoot = root.toRealPath();
        Path last = root.toAbsolutePath().normalize().getFileName();
        this.name = last == null ? "content" : last.toString();
        for (Path entry : list(root, "")) {
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

    /** What is in a folder, in order; of a folder beyond all measure, no more than can be handled. */
    private List<Path> list(Path folder, String relative) throws IOException {
        List<Path> entries = new ArrayList<>();
        try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder)) {
            Iterator<Path> each = stream.iterator();
            while (each.hasNext() && entries.size() <= MOST_FILES) {
                entries.add(each.next());
            }
        }
        entries.sort(Comparator.comparing(entry -> entry.getFileName().toString()));
        Map<String, String> names = new HashMap<>();
        for (Path entry : entries) {
            String name = entry.getFileName().toString();
            String first = names.putIfAbsent(FileNames.folded(name), name);
            if (first != null) {
                findings.add(FormRule.COLLIDING_ID.at(start(relative + name), "expected names that differ in more "
                        + "than capitals and accents, found '" + name + "' beside '" + first + "'",
                        "rename one of the two: some machines keep only one of them"));
            }
        }
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
        for (Path entry : list(folder, folderName + "/")) {
            String file = entry.getFileName().toString();
            if (!file.startsWith(".") && !BESIDE.contains(file)) {
                file(entry, folderName, file);
            }
        }
    }

    /** Texts in another language: every folder may hold .yaml files, whatever the base holds there. */
    private void language(Path folder, String relative) throws IOException {
        for (Path entry : list(folder, relative + "/")) {
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
        if (FileNames.isDevice(file)) {
            findings.add(FormRule.BAD_ID.at(start(relative), "expected a name that every machine can keep, found '"
                    + file + "', which Windows takes for a device",
                    "rename the file, as in 'a-" + file + "'; it is not read under this name"));
            return;
        }
        if (kind.get() != FileKind.TRANSLATION && !ScalarReading.isId(id)) {
            findings.add(FormRule.BAD_ID.at(start(relative),
                    "expected a file name of lower-case letters, digits and hyphens, found '" + file + "'",
                    "rename the file as in 'colorado-potato-beetle.yaml'; it is not read under this name"));
            return;
        }
        bytes += Math.min(Files.size(entry), kind.get().limit().bytes());
        if (bytes > MOST_BYTES) {
            if (findings.stream().noneMatch(finding -> finding.rule().equals(FormRule.TOO_MANY_FILES.id()))) {
                findings.add(FormRule.TOO_MANY_FILES.at(start(relative), "expected files of at most "
                        + (MOST_BYTES >> 20) + " MiB together, found more", "split the content base"));
            }
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

    /** Two images of one id, or two entries that texts would call by the same. */
    private void collisions() {
        Map<String, String> images = new HashMap<>();
        Map<String, String> entries = new HashMap<>();
        for (ContentFile file : files) {
            if (file.kind().isImage()) {
                collision(images, file, "image", "keep one of the two, or rename one with its note");
            } else if (ENTRIES.contains(file.kind())) {
                collision(entries, file, "entry or chapter", "rename one of the two");
            }
        }
    }

    private void collision(Map<String, String> known, ContentFile file, String what, String hint) {
        String first = known.putIfAbsent(file.id(), file.path());
        if (first != null) {
            findings.add(FormRule.COLLIDING_ID.at(Span.startOf(new SourceFile(file.path(), "")), "expected one "
                    + what + " of the id '" + file.id() + "', found this one beside " + first, hint));
        }
    }

    @Override
    public String toString() {
        return root.toString();
    }
}
