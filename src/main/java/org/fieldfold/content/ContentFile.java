package org.fieldfold.content;

import java.nio.file.Path;

/**
 * A file that is to be read.
 *
 * @param path as it is shown, from the content base's own name on, with {@code /}
 * @param id what its name says
 */
record ContentFile(String path, Path file, FileKind kind, String id) {
}
