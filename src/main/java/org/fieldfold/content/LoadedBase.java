package org.fieldfold.content;

import java.util.List;
import java.util.Optional;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.source.Finding;

/**
 * What came of reading a folder.
 *
 * @param base everything that was understood; empty only when {@code edition.yaml} is missing or not
 * understood
 * @param findings what is wrong with the files' form, sorted
 * @param inputs the files that were read, sorted by path
 */
public record LoadedBase(Optional<ContentBase> base, List<Finding> findings, List<InputFile> inputs) {
    public LoadedBase {
        findings = List.copyOf(findings);
        inputs = List.copyOf(inputs);
    }
}
