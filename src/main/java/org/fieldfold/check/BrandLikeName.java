package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.source.Finding;

/** Materials go by their active ingredient, never by what they are sold as. */
final class BrandLikeName implements Rule {
    @Override
    public String id() {
        return "brand-like-name";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        Facts.texts(base, text -> {
            Matcher mark = MARK.matcher(text.prose().words());
            if (mark.find()) {
                found.accept(Finding.error(text.span(), id(), "expected the name of an active ingredient, found '"
                        + mark.group().strip() + "', which looks like a product",
                        "name what is in it; a number and letters behind a capital name are how products are written"));
            }
        });
    }

    /** A trade-mark sign, or a capital name followed by a formulation as on a label: 50WP, 2.5 EC, 480 SC. */
    private static final Pattern MARK = Pattern.compile("\\S*[®™]|"
            + "\\b\\p{Lu}\\p{L}+ ?\\d+(?:\\.\\d+)? ?(?:WP|WG|WDG|EC|SC|SL|DF|SG|EW|ULV|ME)\\b");
}
