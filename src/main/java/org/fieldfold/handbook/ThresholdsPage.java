package org.fieldfold.handbook;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fieldfold.edition.ThresholdWords;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Keys;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Source;
import org.fieldfold.entry.Standing;
import org.fieldfold.entry.Threshold;

/** For the specialist: every threshold as it is printed, with its source, and where sources disagree. */
public final class ThresholdsPage {
    private final ContentBase base;
    private final Markup out = new Markup();

    private ThresholdsPage(ContentBase base) {
        this.base = base;
    }

    /** The page as a file, self-contained and without script. */
    public static byte[] write(ContentBase base, boolean proof) {
        ThresholdsPage page = new ThresholdsPage(base);
        ReviewHead.open(page.out, base.edition().value(), "Thresholds", "Every number at which it pays to act, with "
                + "its source, and where two sources answer the same question differently.", proof);
        List<PestEntry> pests = base.pests().values().stream().map(Placed::value).toList();
        long all = pests.stream().mapToLong(pest -> pest.thresholds().size()).sum();
        long conflicts = pests.stream().flatMap(pest -> pest.thresholds().stream()
                .filter(threshold -> page.rival(pest, threshold).isPresent())).count();
        long memory = pests.stream().flatMap(pest -> pest.thresholds().stream()).filter(page::fromMemory).count();
        page.out.element("p", all + " thresholds; " + conflicts + " where sources disagree; " + memory
                + " from memory.").line();
        pests.forEach(page::pest);
        page.out.close().close();
        return new Frame("en").inline("Thresholds of edition " + base.edition().value().year(),
                Sheet.read("handbook.css") + Sheet.read("review.css"), page.out.toString());
    }

    private void pest(PestEntry pest) {
        out.open("section", "class", "part").element("h2", pest.names().common());
        out.open("table").open("thead").open("tr");
        List.of("Threshold", "Where", "Number", "Source").forEach(column ->
                out.element("th", column, "scope", "col"));
        out.close().close().open("tbody").line();
        pest.thresholds().forEach(threshold -> row(pest, threshold));
        out.close().close().close().line();
    }

    private void row(PestEntry pest, Threshold threshold) {
        Optional<Threshold> rival = rival(pest, threshold);
        out.open("tr", "class", rival.isPresent() ? "tight" : "easy").element("td", threshold.id())
                .element("td", where(threshold)).open("td").text(ThresholdWords.of(pest, threshold));
        rival.ifPresent(other -> out.empty("br").element("strong", "'" + other.id() + "' says "
                + ThresholdWords.of(pest, other) + "; the pocket prints that one, the handbook both"));
        out.close().element("td", threshold.source().map(this::source).orElse("none")).close().line();
    }

    private String where(Threshold threshold) {
        String crop = threshold.crop().map(id -> Optional.ofNullable(base.crops().get(id))
                .map(known -> known.value().name()).orElse(id)).orElse("any of its crops");
        return crop + threshold.when().map(when -> ", " + when).orElse("") + threshold.stages().map(stages ->
                ", BBCH " + stages.from() + "–" + stages.to()).orElse("") + (threshold.audiences().isEmpty() ? ""
                : "; " + threshold.audiences().stream().map(Keys::word).collect(Collectors.joining(", ")));
    }

    private String source(String id) {
        return Optional.ofNullable(base.sources().get(id)).map(Placed::value).map(source -> source.authors()
                + source.year().map(year -> " " + year).orElse("") + (isFromMemory(source) ? ", from memory" : "")
                + source.supersededBy().map(next -> ", superseded by " + next).orElse("")).orElse(id);
    }

    private boolean fromMemory(Threshold threshold) {
        return threshold.source().map(base.sources()::get).filter(source -> isFromMemory(source.value())).isPresent();
    }

    private static boolean isFromMemory(Source source) {
        return source.standing() == Standing.VALUE_FROM_MEMORY;
    }

    /** The threshold before this one that answers the same question with another number. */
    private Optional<Threshold> rival(PestEntry pest, Threshold threshold) {
        return pest.thresholds().stream().takeWhile(earlier -> !earlier.equals(threshold))
                .filter(earlier -> earlier.asksTheSameAs(threshold)
                        && !earlier.figure().equals(threshold.figure())).findFirst();
    }
}
