package org.fieldfold.cli;

import java.util.List;
import java.util.Optional;
import org.fieldfold.source.Finding;

/**
 * The entries and files that somebody asks about, so that what is said of all others does not hide what is said
 * of them.
 *
 * @param only ids, as in {@code leek-moth}, or paths, as in {@code pests/leek-moth.yaml}; empty for everything
 */
record AskedFor(List<String> only) {
    /** Whether a finding is about one of them: its file, its translation, its drawings. */
    boolean concerns(Finding finding) {
        return only.isEmpty() || only.stream().anyMatch(one -> isOf(one, finding.span().file().path()));
    }

    /** The first that no file is named by. */
    Optional<String> unknown(List<String> paths) {
        return only.stream().filter(one -> paths.stream().noneMatch(path -> isOf(one, path))).findFirst();
    }

    private static boolean isOf(String one, String path) {
        String asked = one.replace('\\', '/');
        if (path.equals(asked) || path.endsWith("/" + asked)) {
            return true;
        }
        String name = path.substring(path.lastIndexOf('/') + 1);
        String id = name.contains(".") ? name.substring(0, name.lastIndexOf('.')) : name;
        return id.equals(asked) || path.contains("/figures/") && id.startsWith(asked + "-");
    }
}
