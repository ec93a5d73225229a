package org.fieldfold.check;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.source.Finding;

/**
 * A crop that no entry names has nothing to be said about it: a slip, or left over from something that was
 * cut.
 */
final class CropUnused implements Rule {
    @Override
    public String id() {
        return "crop-unused";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        if (!base.unread().isEmpty()) {
            return; // an entry that could not be read may name it
        }
        Set<String> harmed = new HashSet<>();
        base.pests().values().forEach(pest -> harmed.addAll(pest.value().crops()));
        base.crops().forEach((id, crop) -> {
            if (!harmed.contains(id)) {
                found.accept(Finding.warning(crop.at("id"), id(), "expected a pest of crop '" + id
                        + "', found none", "name it under 'crops:' of an entry, or take it out"));
            }
        });
    }
}
