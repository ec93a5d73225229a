package org.fieldfold.check;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import org.fieldfold.entry.Audience;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/** Material that only a licensed applicator may use never reaches a home garden. */
final class RestrictedInGarden implements PestRule {
    @Override
    public String id() {
        return "restricted-in-garden";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        Controls.insecticides(pest.value()).forEach((i, use) -> {
            boolean restricted = Optional.ofNullable(base.materials().get(use.material()))
                    .map(material -> material.value().restrictedUse()).orElse(false);
            boolean inGarden = base.guides().values().stream()
                    .anyMatch(guide -> guide.value().audience() == Audience.GARDEN
                    && guide.value().entries().contains(pest.value().id()));
            if (restricted && inGarden && Audience.GARDEN.among(use.audiences())) {
                found.accept(Finding.error(pest.at("controls", i), id(),
                        "expected no restricted-use material in a "
                        + "home-garden guide, found " + use.material(),
                        "add 'audiences: [field, tunnel]' to this measure"));
            }
        });
    }
}
