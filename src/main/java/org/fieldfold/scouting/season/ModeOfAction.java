package org.fieldfold.scouting.season;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A mode-of-action group as the international classification writes it: a number, perhaps with a letter for a
 * subgroup (4A), or UN and its kin for what is unknown. Subgroups of one number act at the same place, so
 * that changing from 4A to 4C is no rotation.
 *
 * @param code as printed, upper case
 */
public record ModeOfAction(String code) implements Comparable<ModeOfAction> {
    private static final Pattern NUMBERED = Pattern.compile("[1-9][0-9]?[A-Z]?");
    private static final Pattern UNKNOWN = Pattern.compile("UN[A-Z]{0,2}");

    public ModeOfAction {
        code = code.strip().toUpperCase(Locale.ROOT);
        if (!NUMBERED.matcher(code).matches() && !UNKNOWN.matcher(code).matches()) {
            throw new IllegalArgumentException("a mode-of-action group must look like 5, 4A or UN, found "
                    + code);
        }
    }

    /** Whether the classification does not know where it acts; such materials bind no rotation. */
    public boolean isUnknown() {
        return code.startsWith("UN");
    }

    /** The group without its subgroup: 4 for 4A; UN codes whole. */
    public String group() {
        return isUnknown() ? code : code.replaceAll("[A-Z]$", "");
    }

    @Override
    public int compareTo(ModeOfAction other) {
        return code.compareTo(other.code);
    }

    @Override
    public String toString() {
        return code;
    }
}
