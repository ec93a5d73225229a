package org.fieldfold.check;

import java.util.Optional;
import java.util.regex.Pattern;
import org.fieldfold.scouting.season.ModeOfAction;

/**
 * Codes of the published mode-of-action classification (IRAC, scheme 11; from memory, not re-read): a main
 * number up to 37, where 26 and 27 are not given, often with a letter for the subgroup; or UN and its kin for
 * what is not known. {@code none} is our own word for a material without a number, such as soap.
 */
final class GroupCode {
    static final String NONE = "none";
    private static final Pattern CODE = Pattern.compile("UN[BEFMPV]?|([1-9]|1[0-9]|2[0-589]|3[0-7])[A-F]?");

    private GroupCode() {
    }

    static boolean wellFormed(String code) {
        return code.equals(NONE) || CODE.matcher(code).matches();
    }

    /**
     * The number that a change of materials must change: 4 for 4A; empty for a code that binds no rotation.
     */
    static Optional<String> mainGroup(String code) {
        if (code.equals(NONE) || !wellFormed(code)) {
            return Optional.empty();
        }
        return Optional.of(new ModeOfAction(code)).filter(mode -> !mode.isUnknown()).map(ModeOfAction::group);
    }
}
