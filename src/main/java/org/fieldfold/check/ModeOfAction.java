package org.fieldfold.check;

import java.util.regex.Pattern;

/**
 * Codes of the published mode-of-action classification (IRAC, scheme 11): a main number from 1 to 37, often with a
 * letter for the subgroup; or UN and its kin for what is not yet known. {@code none} is our own word for a material
 * without a number, such as soap.
 */
final class ModeOfAction {
    static final String NONE = "none";
    private static final Pattern CODE = Pattern.compile("UN[BEFMPV]?|([1-9]|[12][0-9]|3[0-7])[A-F]?");

    private ModeOfAction() {
    }

    static boolean wellFormed(String code) {
        return code.equals(NONE) || CODE.matcher(code).matches();
    }

    /** The number without its letter: 4A and 4C share the main group 4. Codes that begin with UN stand for themselves. */
    static String mainGroup(String code) {
        return code.startsWith("UN") || code.equals(NONE) ? code : code.replaceAll("[A-F]$", "");
    }
}
