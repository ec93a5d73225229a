package org.fieldfold;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.fieldfold.source.Finding;
import org.fieldfold.typeset.SetGuide;

/**
 * What is to be known of set panels before they are printed.
 *
 * @param sheets on which they lie
 * @param letters every character once
 */
record Look(List<SetGuide.PanelFit> fit, List<Finding> findings, int sheets, String letters) {
    static Look at(Setting.Set set, Set<Integer> characters) {
        return new Look(set.guide().fit(), set.guide().findings(), set.sheets(),
                new TreeSet<>(characters).stream()
                .map(Character::toString).collect(Collectors.joining()));
    }

    Set<Integer> characters() {
        return letters.codePoints().boxed().collect(Collectors.toCollection(TreeSet::new));
    }
}
