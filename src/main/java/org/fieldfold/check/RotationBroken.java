package org.fieldfold.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.SeasonRotation;
import org.fieldfold.scouting.season.ModeOfAction;
import org.fieldfold.scouting.season.Rotation;
import org.fieldfold.source.Finding;

/** A season's plan gives no group to two broods running, nor too often, and only what is listed. */
final class RotationBroken implements PestRule {
    @Override
    public String id() {
        return "rotation-broken";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        if (pest.value().rotation().isEmpty()) {
            return;
        }
        SeasonRotation season = pest.value().rotation().get();
        List<List<ModeOfAction>> broods = new ArrayList<>();
        for (int i = 0; i < season.broods().size(); i++) {
            List<String> materials = season.broods().get(i).materials();
            for (int j = 0; j < materials.size(); j++) {
                if (!isListed(pest.value(), materials.get(j))) {
                    found.accept(Finding.error(pest.at("rotation", "broods", i, "materials", j), id(),
                            "expected a material among the controls of this entry, found '"
                            + materials.get(j) + "'", "list it under tier 3, or take another"));
                }
            }
            broods.add(materials.stream().flatMap(material -> mode(material, base).stream()).toList());
        }
        for (Rotation.Violation broken : new Rotation(broods).violations(season.mostUses())) {
            found.accept(Finding.error(pest.at("rotation", "broods", broken.generation() - 1, "materials"),
                    id(), "expected " + rule(broken, season) + ", found group " + broken.group()
                    + " for '" + season.broods().get(broken.generation() - 1).name() + "' again",
                    "take a material of another main number for this brood"));
        }
    }

    private static String rule(Rotation.Violation broken, SeasonRotation season) {
        return switch (broken.rule()) {
            case SAME_GROUP_IN_NEXT_GENERATION -> "another group for the brood after";
            case MORE_USES_THAN_ALLOWED -> "a group at most " + season.mostUses() + " times in a season";
        };
    }

    private static boolean isListed(PestEntry entry, String material) {
        return entry.controls().stream().anyMatch(control -> control instanceof Control.Insecticide use
                && use.material().equals(material));
    }

    /** A material without a number binds no rotation. */
    private static Optional<ModeOfAction> mode(String material, ContentBase base) {
        return Optional.ofNullable(base.materials().get(material)).flatMap(known -> known.value().group())
                .flatMap(GroupCode::mainGroup).map(ModeOfAction::new);
    }
}
