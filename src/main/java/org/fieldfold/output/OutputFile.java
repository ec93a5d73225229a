package org.fieldfold.output;

/** One file of a build: its path inside it with {@code /}, its size in bytes, and its hash. */
public record OutputFile(String path, long size, String sha256) {
}
