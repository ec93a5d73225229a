package org.fieldfold.content;

/**
 * A file that was read, so that a build can say what it was made from.
 *
 * @param path relative to the content base's parent, with {@code /}
 * @param size in bytes
 * @param sha256 of its bytes, 64 lower-case hexadecimal digits
 */
public record InputFile(String path, long size, String sha256) {
}
