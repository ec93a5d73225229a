package org.fieldfold.content;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A file that was read, so that a build can say what it was made from.
 *
 * @param path relative to the content base's parent, with {@code /}
 * @param size in bytes
 * @param sha256 of its bytes, 64 lower-case hexadecimal digits
 */
public record InputFile(String path, long size, String sha256) {
    /** The hashes of files by their paths. */
    public static Map<String, String> hashes(List<InputFile> files) {
        return files.stream().collect(Collectors.toMap(InputFile::path, InputFile::sha256));
    }
}
