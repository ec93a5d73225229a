package org.fieldfold.manuscript;

import java.util.Locale;
import org.fieldfold.entry.PlantPart;

/**
 * Ids of the pages that the handbook makes itself. Entries are named after their files, whose names hold no
 * colon, so the two never meet.
 */
final class Places {
    static final String START = "at:start";
    static final String NEWS = "at:news";
    static final String CROPS = "at:crops";
    static final String LOOK = "at:look";
    static final String ANIMALS = "at:animals";
    static final String COUNT = "at:count";
    static final String WEEKS = "at:weeks";
    static final String ENEMIES = "at:friends";
    static final String PRACTICES = "at:practices";
    static final String CHAPTERS = "at:reading";
    static final String MATERIALS = "at:materials";
    static final String CAUTIONS = "at:cautions";
    static final String SOURCES = "at:sources";
    static final String RECKONERS = "at:reckoners";
    static final String WALKS = "at:walks";
    static final String CATCH_TEST = "at:catch-test";
    static final String NOTES = "at:notes";
    static final String OFFICES = "at:offices";

    private Places() {
    }

    static String crop(String id) {
        return "crop:" + id;
    }

    static String part(PlantPart part) {
        return "part:" + part.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static String weeks(String station) {
        return "weeks:" + station;
    }

    static String chapter(String id) {
        return "read:" + id;
    }

    static String to(String page) {
        return "#" + page;
    }
}
