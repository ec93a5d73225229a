package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.source.Finding;

/** Mode-of-action codes are those of the published classification. */
final class GroupCodeForm implements Rule {
    @Override
    public String id() {
        return "group-code-form";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        base.materials().values().forEach(material -> material.value().group()
                .filter(code -> !GroupCode.wellFormed(code)).ifPresent(code -> found.accept(Finding.error(
                        material.at("group"), id(), "expected a code such as 4A, 28 or UN, or none, found '"
                        + code + "'",
                        "look it up in the published classification; the letter is a capital"))));
    }
}
