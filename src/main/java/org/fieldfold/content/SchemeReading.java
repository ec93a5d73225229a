package org.fieldfold.content;

import java.util.List;
import java.util.Optional;
import org.fieldfold.fold.FoldException;
import org.fieldfold.fold.FoldScheme;
import org.fieldfold.fold.FoldSchemes;
import org.fieldfold.source.Finding;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;

/** Reads a fold scheme of the content base's own, and folds it to see that it can be folded. */
final class SchemeReading {
    private SchemeReading() {
    }

    static Optional<FoldScheme> read(SourceFile source, String id, List<Finding> findings) {
        try {
            FoldScheme scheme = FoldSchemes.read(id + ".fold", source.text());
            if (!scheme.id().equals(id)) {
                findings.add(FormRule.FOLD_SCHEME_BROKEN.at(statement(source, "scheme"), "expected 'scheme "
                        + id + "', as the file is named, found 'scheme " + scheme.id() + "'",
                        "rename the file, or the scheme in it"));
                return Optional.empty();
            }
            if (FoldSchemes.find(id).isPresent()) {
                findings.add(FormRule.FOLD_SCHEME_BROKEN.at(statement(source, "scheme"), "expected an id "
                        + "that no scheme has yet, found '" + id + "', which is always there",
                        "give it another id, also in the name of the file"));
                return Optional.empty();
            }
            FoldSchemes.prove(scheme);
            return Optional.of(scheme);
        } catch (FoldException e) {
            boolean read = e.line() == 0;
            findings.add(FormRule.FOLD_SCHEME_BROKEN.at(read ? statement(source, "fold")
                    : line(source, e.line()), read ? "expected a sheet that can be folded and read so, "
                    + "found that " + e.reason() : e.reason().startsWith("expected ") ? e.reason()
                    : "expected a scheme in good form, found that " + e.reason(),
                    read ? "fold a sheet of paper by these lines and follow it"
                            : "run 'fieldfold explain fold-scheme-broken' for a scheme to begin from"));
            return Optional.empty();
        }
    }

    /** The first line that begins with a word, or the start of the file. */
    private static Span statement(SourceFile source, String word) {
        String[] lines = source.text().split("\n", -1);
        for (int i = 0; i < lines.length; i++) {
            if (lines[i].strip().startsWith(word + " ")) {
                return line(source, i + 1);
            }
        }
        return Span.startOf(source);
    }

    /** A line of the file, which may have fewer of them where it ends in line ends. */
    private static Span line(SourceFile source, int number) {
        int start = 0;
        for (int line = 1; line < number; line++) {
            int end = source.text().indexOf('\n', start);
            if (end < 0) {
                return Span.startOf(source);
            }
            start = end + 1;
        }
        int end = source.text().indexOf('\n', start);
        return new Span(source, start, end < 0 ? source.text().length() : end);
    }
}
