package org.fieldfold.check;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import org.fieldfold.entry.ActiveIngredient;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/** Labels change every winter: a material's were looked at within the edition's age limit. */
final class LabelNotChecked implements Rule {
    @Override
    public String id() {
        return "label-not-checked";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        int months = base.edition().value().maxAgeMonths();
        for (Placed<ActiveIngredient> material : base.materials().values()) {
            Optional<LocalDate> checked = material.value().labelChecked();
            if (checked.isEmpty() || checked.get().isAfter(asOf) || checked.get().plusMonths(months)
                    .isBefore(asOf)) {
                found.accept(Finding.error(material.at("label-checked"), id(), "expected labels of "
                        + material.value().name() + " looked at within " + months + " months before " + asOf
                        + ", found " + checked.map(LocalDate::toString).orElse("no date"),
                        "look at today's labels, then change 'label-checked:'"));
            }
        }
    }
}
