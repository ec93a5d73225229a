package org.fieldfold.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.Placed;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.FoldSchemes;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.PanelSlot;
import org.fieldfold.fold.Paper;
import org.fieldfold.manuscript.GuideWriter;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.OfficePanel;
import org.fieldfold.manuscript.Phrases;
import org.junit.jupiter.api.Test;

/** Sets every guide that ships, in the real type; pictures are left in {@code target/look}. */
class ShippedGuidesTest {
    private static final Pattern BOX =
            Pattern.compile("viewBox=\"\\s*[-0-9.]+[ ,]+[-0-9.]+[ ,]+([0-9.]+)[ ,]+([0-9.]+)\\s*\"");

    @Test
    void panelsOfEveryGuideHold() throws IOException {
        SourceSans type = new SourceSans();
        Setter setter = new Setter(type, ShippedGuidesTest::aspect);
        ContentBase base = BaseLoader.load(Path.of("content")).base().orElseThrow();
        for (Map.Entry<String, Manuscript> guide : manuscripts(base).entrySet()) {
            List<PanelSlot> slots = slots(base.guides().get(guide.getKey()).value());
            List<Frame> frames = slots.stream().map(Frame::of).toList();
            SetGuide set = setter.set(guide.getValue(), slots);
            PanelCheck.check(type, frames, set);
            PanelSvg.write(Path.of("target/look/" + guide.getKey() + ".svg"), type, set.panels(),
                    slots.get(0).uprightWidth(), slots.get(0).uprightHeight());
            if (set.findings().isEmpty() && set.fit().stream().allMatch(fit -> fit.brief() == 0)) {
                List<String> written = new ArrayList<>(Reading.written(guide.getValue()));
                written.removeAll(Reading.aloud(set));
                assertEquals(List.of(), written, "lost from " + guide.getKey());
            }
        }
    }

    static List<PanelSlot> slots(Guide guide) {
        return Imposition.of(FoldSchemes.named(guide.scheme()), Paper.LETTER, FlipEdge.SHORT).slots();
    }

    static Map<String, Manuscript> manuscripts(ContentBase base) {
        Map<String, Manuscript> manuscripts = new TreeMap<>();
        for (Placed<Guide> guide : base.guides().values()) {
            manuscripts.put(guide.value().id(), new GuideWriter(base, Phrases.in("en"))
                    .write(guide, OfficePanel.generic(base.edition()), false));
        }
        return manuscripts;
    }

    static double aspect(String figure) {
        try {
            Path file = Path.of("content/figures/" + figure + ".svg");
            Matcher box = BOX.matcher(Files.exists(file) ? Files.readString(file) : "");
            return box.find() ? Double.parseDouble(box.group(1)) / Double.parseDouble(box.group(2)) : 1;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
