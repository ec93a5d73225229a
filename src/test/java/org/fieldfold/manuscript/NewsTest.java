package org.fieldfold.manuscript;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.edition.Change;
import org.fieldfold.edition.ChangeGroup;
import org.fieldfold.edition.Comparison;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.prose.Run;
import org.junit.jupiter.api.Test;

/** What growers are told of a new edition. */
class NewsTest {
    private static Change change(ChangeGroup group, String kind, String id, String item, Change.Part part) {
        return new Change(group, kind, id, id, "thing", "", item, List.of(part));
    }

    private static Change.Part part(String before, String after, String unit) {
        return new Change.Part("", Optional.ofNullable(before), Optional.ofNullable(after), unit);
    }

    private static final News NEWS = News.of(Optional.of(new Comparison("2026", "2027", List.of(
            change(ChangeGroup.THRESHOLDS, "pests", "onion-thrips", "", part("3", "1", "thrips per leaf")),
            change(ChangeGroup.THRESHOLDS, "pests", "leek-moth", "", part("5 % of plants", "no number", "")),
            change(ChangeGroup.MATERIALS, "pests", "onion-thrips", "spinosad", part("", null, "")),
            change(ChangeGroup.MATERIALS, "materials", "abamectin", "",
                    new Change.Part("withdrawn from 2027", Optional.empty(), Optional.empty(), "")),
            change(ChangeGroup.CAUTIONS, "pests", "codling-moth", "", part("a", "b", "")),
            change(ChangeGroup.WORDING, "pests", "onion-thrips", "", part("a", "b", ""))))));

    private static String words(List<Run> runs) {
        return runs.stream().map(Run::text).collect(Collectors.joining());
    }

    @Test
    void aGuideTellsOfItsOwnEntriesInFewWordsAndMayLeaveThemOut() throws IOException {
        ContentBase base = BaseLoader.load(Path.of("content")).base().orElseThrow();
        Manuscript guide = new GuideWriter(base, Phrases.in("en"), NEWS).write(base.guides().get("onion-family"),
                OfficePanel.generic(base.edition()), false);
        List<Block> scouting = guide.sections().stream()
                .filter(section -> section.kind() == Section.Kind.SCOUTING).findFirst().orElseThrow().blocks();
        Block.Items news = (Block.Items) scouting.get(scouting.size() - 1);
        assertEquals(0, news.needed());
        assertEquals(List.of("New this year · Onion thrips: act at 1, no longer at 3",
                "Leek moth: the count to act at has changed", "Onion thrips: spinosad is withdrawn",
                "Abamectin: withdrawn. Do not use it any more; ask what to do with the rest"),
                news.items().stream().map(NewsTest::words).toList());
        assertTrue(new GuideWriter(base, Phrases.in("en")).write(base.guides().get("onion-family"),
                OfficePanel.generic(base.edition()), false).sections().stream()
                .flatMap(section -> section.blocks().stream()).filter(Block.Items.class::isInstance)
                .map(block -> (Block.Items) block).allMatch(items -> items.needed() > 0), "without an edition "
                        + "before, there is no such list");
    }
}
