package org.fieldfold.scouting.degreeday;

/** What heat above the upper threshold does to development. */
public enum Cutoff {
    /** It adds nothing more: the rate stays what it is at the upper threshold. */
    HORIZONTAL,
    /** It takes back one for one: the rate falls again above the upper threshold. */
    INTERMEDIATE,
    /** It stops development while it lasts: the rate is 0 above the upper threshold. */
    VERTICAL
}
