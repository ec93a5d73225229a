package org.fieldfold.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.source.Finding;

/** All rules, in the order in which a reader would ask them. A new rule is one line here. */
public final class Rulebook {
    private static final List<Rule> RULES = List.of();

    private Rulebook() {
    }

    public static List<Rule> rules() {
        return RULES;
    }

    /** Every finding of every rule, sorted by file and position. */
    public static List<Finding> check(ContentBase base, LocalDate asOf) {
        List<Finding> findings = new ArrayList<>();
        for (Rule rule : RULES) {
            rule.check(base, asOf, findings::add);
        }
        Collections.sort(findings);
        return List.copyOf(findings);
    }
}
