package org.fieldfold.content;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fieldfold.entry.Chapter;
import org.fieldfold.source.Finding;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;

/** A chapter: a Markdown file whose first line is its title. */
record ChapterReading(Optional<Chapter> chapter, Map<String, Span> places) {
    private static final Pattern TITLE = Pattern.compile("\\s*#[ ]+(\\S[^\\r\\n]*)");

    static ChapterReading read(SourceFile file, String id, TextReading texts,
            java.util.List<Finding> findings) {
        Matcher title = TITLE.matcher(file.text());
        if (!title.lookingAt()) {
            int line = 1;
            while (line < file.lineCount() && file.lineText(line).isBlank()) {
                line++;
            }
            findings.add(FormRule.MISSING_TITLE.at(new Span(file, file.lineStart(line), file.lineStart(line)
                    + file.lineText(line).length()), "expected a line '# Title' first, found '"
                    + ScalarReading.cut(file.lineText(line)) + "'",
                            "begin the chapter with '# ' and its title"));
            return new ChapterReading(Optional.empty(), Map.of());
        }
        Span body = new Span(file, title.end(), file.text().length());
        String markdown = file.text().substring(title.end()).replace("\r\n", "\n").replace('\r', '\n')
                .strip();
        Span words = new Span(file, title.start(1), title.end(1));
        Chapter chapter = new Chapter(id, title.group(1).strip(),
                texts.prose(new YamlNode.Scalar(markdown, YamlNode.Style.BLOCK, body), findings));
        return new ChapterReading(Optional.of(chapter), Map.of("", words, "title", words, "body", body));
    }
}
