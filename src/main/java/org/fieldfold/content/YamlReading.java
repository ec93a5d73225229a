package org.fieldfold.content;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fieldfold.source.Finding;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * One YAML file, read to its end: where it is not YAML, the slip is named, mended as far as needed to go on,
 * and the text read again, so that all slips are found in one run.
 *
 * @param root what was read; empty when nothing could be
 * @param lines the 1-based lines that were mended: further findings on them would only repeat the first
 * @param guessed whether lines had to be passed over, so that a missing key may only have been one of them
 */
record YamlReading(Optional<YamlNode> root, Set<Integer> lines, boolean guessed) {
    private static final int MOST_SLIPS = 40;

    static YamlReading read(SourceFile file, List<Finding> findings) {
        Set<Integer> lines = new HashSet<>();
        MendedText text = new MendedText(file);
        boolean guessed = false;
        for (int slips = 0; slips < MOST_SLIPS; slips++) {
            List<Finding> found = new ArrayList<>();
            try {
                Optional<YamlNode> root = new YamlComposer(text, found).compose();
                findings.addAll(found);
                return new YamlReading(root, lines, guessed);
            } catch (YamlComposer.TooDeep deep) {
                findings.addAll(found);
                return new YamlReading(Optional.empty(), lines, true);
            } catch (YamlEngineException trouble) {
                YamlSlips.Slip slip = slip(text, trouble);
                if (lines.add(slip.finding().span().line()) && !findings.contains(slip.finding())) {
                    findings.add(slip.finding());
                }
                guessed |= slip.guessed();
                if (slips == MOST_SLIPS - 1) {
                    findings.add(FormRule.NOT_YAML.at(slip.finding().span(), "expected YAML, found "
                            + MOST_SLIPS + " slips and read no further", "mend these first"));
                }
                if (slip.mended().text().equals(text.text())) {
                    return new YamlReading(Optional.empty(), lines, true);
                }
                text = slip.mended();
            }
        }
        return new YamlReading(Optional.empty(), lines, true);
    }

    private static YamlSlips.Slip slip(MendedText text, YamlEngineException trouble) {
        if (trouble instanceof ReaderException unreadable) {
            return controlCharacter(text, unreadable);
        }
        if (trouble instanceof MarkedYamlEngineException marked) {
            return new YamlSlips(text, marked).slip();
        }
        Span start = Span.startOf(text.file());
        return new YamlSlips.Slip(FormRule.NOT_YAML.at(start, "expected YAML, found something that is none: "
                + trouble.getMessage(), "begin the file again from a sample"), text, true);
    }

    private static YamlSlips.Slip controlCharacter(MendedText text, ReaderException unreadable) {
        int at = text.text().indexOf(new String(Character.toChars(unreadable.getCodePoint())));
        MendedText mended = at < 0 ? text
                : text.replace(at, at + Character.charCount(unreadable.getCodePoint()), " ");
        return new YamlSlips.Slip(UnseenCharacters.finding(text.span(Math.max(at, 0), Math.max(at, 0) + 1),
                unreadable.getCodePoint()), mended, false);
    }
}
