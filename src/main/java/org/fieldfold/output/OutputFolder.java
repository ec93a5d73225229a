package org.fieldfold.output;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.locks.ReadWriteLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.fieldfold.report.Checksums;
import org.fieldfold.report.Sha256;

/**
 * The folder of one year's build. Files are written beside it, into a staging folder, and only
 * {@link #publish} puts them in its place: until then, and whenever something fails, the earlier build stands
 * as it was.
 *
 * <p>Java cannot exchange two folders, so the new one comes into its place by two renames, and for the time of
 * one rename (some ten microseconds) there is none: whoever looks just then finds nothing, looks again and
 * finds the new build. A link in its place would be exchanged at once, but a folder that is copied to a stick
 * or a server would be an empty name there, and Windows asks for a right of its own. A build that was cut off
 * in that moment is put back by {@link CutOff}, or when the folder is next opened.
 */
public final class OutputFolder implements AutoCloseable {
    static final String FORMER = ".former";
    private static final String KEPT = "the last build stays as it was";

    private final Path target;
    private final Path staging;
    private final Path former;
    private final FileChannel lockFile;
    private final FileLock lock;
    private final List<Published> files = new ArrayList<>();
    /** Of one who closes, against those who write: where one of several fails, the others may still be at it. */
    private final ReadWriteLock writing = new ReentrantReadWriteLock();
    private Map<String, Published> last = Map.of();
    private int kept;
    private boolean closed;

    private OutputFolder(Path target, FileChannel lockFile, FileLock lock) {
        this.target = target;
        this.staging = staging(target);
        this.former = former(target);
        this.lockFile = lockFile;
        this.lock = lock;
    }

    static Path staging(Path target) {
        return target.resolveSibling("." + target.getFileName() + ".next");
    }

    static Path former(Path target) {
        return target.resolveSibling("." + target.getFileName() + FORMER);
    }

    /**
     * Opens the folder {@code parent/name} for a new build.
     *
     * @throws OutputInUseException when another build has it open
     * @throws UnwritableException when nothing can be written there
     */
    public static OutputFolder open(Path parent, String name) throws IOException {
        try {
            return opened(parent, name);
        } catch (OutputInUseException inUse) {
            throw inUse;
        } catch (IOException | ReadOnlyFileSystemException failed) {
            throw new UnwritableException(parent.resolve(name), KEPT, failed);
        }
    }

    private static OutputFolder opened(Path parent, String name) throws IOException {
        Files.createDirectories(parent);
        FileChannel lockFile = FileChannel.open(parent.resolve("." + name + ".lock"),
                StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock lock = null;
        try {
            lock = lockFile.tryLock();
        } catch (OverlappingFileLockException sameProcess) {
            // the same as a lock held by another process
        }
        if (lock == null) {
            lockFile.close();
            throw new OutputInUseException(parent.resolve(name));
        }
        OutputFolder folder = new OutputFolder(parent.resolve(name), lockFile, lock);
        folder.mend();
        Files.createDirectories(folder.staging);
        return folder;
    }

    private void mend() throws IOException {
        if (Files.exists(former) && !Files.exists(target)) {
            Files.move(former, target);
        }
        delete(former);
        delete(staging);
    }

    /**
     * Adds a file to the build. Several threads may add files.
     *
     * @param path relative, with {@code /}
     * @throws UnwritableException when it cannot be written
     */
    public void write(String path, byte[] bytes) throws IOException {
        write(path, bytes, Optional.empty());
    }

    /**
     * The same.
     *
     * @param madeOf a hash of all that it was made of, by which the next build may {@link #keep} it
     */
    public void write(String path, byte[] bytes, Optional<String> madeOf) throws IOException {
        written(path, bytes, madeOf);
    }

    private Published written(String path, byte[] bytes, Optional<String> madeOf) throws IOException {
        long check = Checksums.of(bytes);
        Published before = last.get(path);
        if (before != null && before.check() == check && before.in(target).filter(there ->
                Arrays.equals(there, bytes)).isPresent() && linked(path)) {
            return add(new Published(path, before.size(), before.sha256(), check, madeOf));
        }
        writeUnlisted(path, bytes);
        return add(new Published(path, bytes.length, Sha256.of(bytes), check, madeOf));
    }

    /** Says what the build was that stands there, so that what stays the same need not be written again. */
    public void follow(Publication published) {
        last = published.files().stream().collect(Collectors.toMap(Published::path, file -> file));
    }

    /**
     * Adds a file of the last build, when it was made of the same and still is what was written then.
     *
     * @return whether it was added; otherwise it has to be written
     */
    public boolean keep(String path, String madeOf) {
        if (standing(path, isMadeOf(madeOf)).isEmpty()) {
            return false;
        }
        synchronized (files) {
            kept++;
        }
        return true;
    }

    /**
     * Adds a file of the last build, when it has the bytes of this hash and still is what was written then.
     *
     * @return whether it was added; otherwise it has to be written
     */
    public boolean stays(String path, String sha256) {
        return standing(path, before -> before.sha256().equals(sha256)).isPresent();
    }

    private static Predicate<Published> isMadeOf(String madeOf) {
        return before -> before.madeOf().equals(Optional.of(madeOf));
    }

    /** Adds a file of the last build, if it is wanted and still is what was written then. */
    private Optional<Published> standing(String path, Predicate<Published> isWanted) {
        Optional<Published> before = Optional.ofNullable(last.get(path)).filter(isWanted)
                .filter(file -> file.in(target).isPresent() && linked(path));
        before.ifPresent(this::add);
        return before;
    }

    /**
     * Adds a file: that of the last build, when it was made of the same and still is what was written then.
     *
     * @param madeOf a hash of all that it is made of
     * @param make makes it, if it has to be written
     */
    public Published put(String path, Optional<String> madeOf, Supplier<byte[]> make) throws IOException {
        Optional<Published> standing = madeOf.flatMap(of -> standing(path, isMadeOf(of)));
        return standing.isPresent() ? standing.get() : written(path, make.get(), madeOf);
    }

    /**
     * Gives a file of the last build a second name in this one; the first goes away when this one is published.
     * Where that cannot be, the file has to be written.
     */
    private boolean linked(String path) {
        writing.readLock().lock();
        try {
            if (closed) {
                return false;
            }
            Path file = staging.resolve(path);
            if (!Files.isDirectory(file.getParent())) {
                Files.createDirectories(file.getParent());
            }
            Files.createLink(file, target.resolve(path));
            return true;
        } catch (IOException | UnsupportedOperationException | SecurityException cannot) {
            return false;
        } finally {
            writing.readLock().unlock();
        }
    }

    private Published add(Published file) {
        synchronized (files) {
            files.add(file);
        }
        return file;
    }

    /** How many files were kept, neither made nor written. */
    public int kept() {
        synchronized (files) {
            return kept;
        }
    }

    /**
     * Adds a file that {@link #files} does not tell, so that it need not be hashed.
     *
     * @throws UnwritableException when it cannot be written
     */
    public void writeUnlisted(String path, byte[] bytes) throws IOException {
        Path file = staging.resolve(path).normalize();
        if (!file.startsWith(staging)) {
            throw new IOException("expected a path inside the build, found '" + path + "'");
        }
        writing.readLock().lock();
        try {
            if (closed) {
                throw new IOException("expected a build that is open, found one that was given up");
            }
            if (!Files.isDirectory(file.getParent())) {
                Files.createDirectories(file.getParent());
            }
            Files.write(file, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        } catch (IOException failed) {
            throw new UnwritableException(target.resolve(path), KEPT, failed);
        } finally {
            writing.readLock().unlock();
        }
    }

    /** What was written so far, sorted by path. */
    public List<OutputFile> files() {
        return published().files().stream().map(Published::file).toList();
    }

    /** The same, as the next build may want to know it. */
    public Publication published() {
        synchronized (files) {
            return new Publication(files.stream().sorted(Comparator.comparing(Published::path)).toList());
        }
    }

    /**
     * Puts the new build in the place of the old one.
     *
     * @throws UnwritableException when the old one cannot be moved, as where another program holds it
     */
    public void publish() throws IOException {
        try {
            if (Files.exists(target)) {
                Files.move(target, former);
            }
            try {
                Files.move(staging, target);
            } catch (IOException failed) {
                if (Files.exists(former)) {
                    Files.move(former, target);
                }
                throw failed;
            }
        } catch (IOException failed) {
            throw new UnwritableException(target, KEPT, failed);
        }
        delete(former);
    }

    public Path target() {
        return target;
    }

    /** Drops what was not published, once nobody writes any more. */
    @Override
    public void close() throws IOException {
        writing.writeLock().lock();
        try {
            closed = true;
            delete(staging);
        } finally {
            writing.writeLock().unlock();
            lock.release();
            lockFile.close();
        }
    }

    private static void delete(Path folder) throws IOException {
        try {
            Files.walkFileTree(folder, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult visitFile(Path file,
                        BasicFileAttributes attributes) throws IOException {
                    Files.delete(file);
                    return FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult postVisitDirectory(Path left, IOException failed) throws IOException {
                    Files.delete(left);
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (NoSuchFileException gone) {
            // nothing to delete
        }
    }
}
