package org.fieldfold.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.fieldfold.source.Finding;

/** A file that keeps many records as a list under one key: crops, active ingredients, sources, prices. */
record ListFile(String key, YamlReading reading, List<Finding> findings) {
    List<YamlNode> items(YamlNode root) {
        List<YamlNode> items = new ArrayList<>();
        if (!(root instanceof YamlNode.Pairs pairs)) {
            if (!(root instanceof YamlNode.Refused)) {
                findings.add(FormRule.WRONG_TYPE.at(root.span(), "expected the key '" + key
                        + "' with a list, found "
                        + ScalarReading.shown(root), "begin with the line '" + key + ":'"));
            }
            return items;
        }
        boolean found = false;
        for (YamlNode.Pair pair : pairs.pairs()) {
            if (!pair.key().value().equals(key)) {
                report(KeySlips.unknownKey(pair, List.of(key), Set.of()));
            } else if (found) {
                report(FormRule.DUPLICATE_KEY.at(pair.key().span(), "expected the key '" + key
                        + "' once, found it again", "put all items under one key"));
            } else {
                found = true;
                take(pair.value(), items);
            }
        }
        if (!found && !reading.guessed()) {
            report(FormRule.MISSING_KEY.at(pairs.span(), "expected the key '" + key + "', found none",
                    "begin with the line '" + key + ":'"));
        }
        return items;
    }

    private void take(YamlNode value, List<YamlNode> items) {
        if (value instanceof YamlNode.Items list) {
            items.addAll(list.items());
        } else if (value instanceof YamlNode.Scalar nothing && nothing.isNothing()) {
            report(KeySlips.nothing(nothing, "a list"));
        } else if (!(value instanceof YamlNode.Refused)) {
            report(FormRule.WRONG_TYPE.at(value.span(), "expected a list for '" + key + "', found "
                    + ScalarReading.shown(value), "begin each item with a hyphen"));
        }
    }

    private void report(Finding finding) {
        if (!reading.lines().contains(finding.span().line())) {
            findings.add(finding);
        }
    }
}
