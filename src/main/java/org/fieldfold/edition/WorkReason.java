package org.fieldfold.edition;

import java.util.Locale;

/** Why an entry is on the worklist; what could hurt a reader most stands first. */
public enum WorkReason {
    ERROR("an error stands"),
    CHANGED("changed since signed"),
    BENEATH("a material, price or drawing changed"),
    SHORT("left short by a material"),
    LABEL("label not checked this winter"),
    MOVED("price moved the threshold"),
    PRICE("price behind the threshold"),
    SUPERSEDED("source superseded"),
    FINDING("a finding is open"),
    ASKED("asked for by an office"),
    TRANSLATION("translation behind"),
    FIGURE("figure without release"),
    AGE("not re-read for this edition");

    private final String words;

    WorkReason(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** The reason that a finding gives. */
    static WorkReason of(String rule, boolean error) {
        return rule.startsWith("price") || rule.startsWith("injury-level") ? PRICE
                : rule.startsWith("translation") ? TRANSLATION
                : rule.equals("figure-without-release") ? FIGURE
                : rule.startsWith("material-left") || rule.startsWith("material-withdrawn") ? SHORT
                : error ? ERROR : FINDING;
    }

    /** As it is written in a table. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
