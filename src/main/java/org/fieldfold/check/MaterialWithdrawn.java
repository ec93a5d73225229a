package org.fieldfold.check;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.fieldfold.entry.ActiveIngredient;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/** What may no longer be used is not told of; what lost one crop of several says so. */
final class MaterialWithdrawn implements PestRule {
    @Override
    public String id() {
        return "material-withdrawn";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        int year = base.edition().value().year();
        Controls.insecticides(pest.value()).forEach((i, use) -> {
            Placed<ActiveIngredient> placed = base.materials().get(use.material());
            if (placed == null) {
                return;
            }
            ActiveIngredient material = placed.value();
            if (material.isGoneFor(year, pest.value().crops())) {
                found.accept(Finding.error(pest.at("controls", i), id(), "expected a material that edition "
                        + year + " may tell of, found " + material.name() + ", "
                        + material.withdrawn().filter(from -> from <= year)
                                .map(from -> "withdrawn from " + from)
                                .orElse("which lost its use on " + String.join(", ", pest.value().crops())),
                        "take this measure out, and put another in its place"));
                return;
            }
            List<String> lost = pest.value().crops().stream().filter(material.lostUses()::contains)
                    .filter(crop -> !says(use, name(crop, base))).toList();
            if (!lost.isEmpty()) {
                found.accept(Finding.warning(pest.at("controls", i), id(), "expected a material that may be "
                        + "used on every crop of the entry, found " + material.name() + ", no longer on "
                        + String.join(", ", lost), "add 'note: Not on " + name(lost.get(0), base)
                                + ".', or take the measure out"));
            }
        });
    }

    private static String name(String crop, ContentBase base) {
        return base.crops().containsKey(crop) ? base.crops().get(crop).value().name() : crop;
    }

    private static boolean says(Control.Insecticide use, String crop) {
        return use.note().map(note -> note.pocket().words().toLowerCase(Locale.ROOT)
                .contains(crop.toLowerCase(Locale.ROOT))).orElse(false);
    }
}
