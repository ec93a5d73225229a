package org.fieldfold.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.LocalNote;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Translation;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Span;

/**
 * A local note gives no count to act at, no material, no waiting time and no other order of work: the base
 * says those, with their sources and cautions. It looks for the words of these things in every language.
 */
final class LocalNoteFacts implements Rule {
    private static final String NUMBER = "(?<![\\p{L}\\d])(?:\\d(?:[\\d.,/]*\\d)?|[¼½¾]|one|two|three|"
            + "four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty|thirty|fifty|half|uno|una?|dos|tres|cuatro|"
            + "cinco|seis|siete|ocho|nueve|diez|doce|quince|veinte|treinta|cincuenta)(?![\\p{L}\\d])";
    private static final String UNIT = "(?:plants?|lea(?:f|ves)|traps?|sweeps?|stems?|stalks?|heads?|fruits?|"
            + "clusters?|terminals?|shoots?|feet|foot|ears?|tubers?|roots?|spears?|flowers?|plantas?|matas?|"
            + "hojas?|trampas?|tallos?|cabezas?|frutos?|frutas?|racimos?|brotes?|mazorcas?|pies?)";
    private static final Pattern COUNT = pattern(
            NUMBER + "[^.;!?]*\\b(?:per|a|each|every|por|cada) " + UNIT + "\\b",
            NUMBER + " ?(?:%|percent\\b|por ciento\\b)",
            NUMBER + " (?:" + UNIT + " )?(?:in|of|out of|en|de) (?!(?:19|20)\\d\\d\\b)" + NUMBER,
            "\\b(?:act|treat|actúe|trate) (?:\\p{L}+ ){0,2}(?:at|when|from|above|over|con|desde|cuando)\\b",
            "\\b(?:threshold|umbral)");
    private static final Pattern WAIT = pattern(
            NUMBER + " (?:days?|hours?|días?|horas?) (?:before|until|after|antes|hasta|después)\\b[^.;!?]*"
                    + "\\b(?:harvest|pick|enter|re-?entry|spray|cosech|recog|entr|reingres)",
            "\\b(?:enter|entre) (?:\\p{L}+ ){0,2}(?:after|tras|después de) " + NUMBER,
            "\\b(?:PHI|REI|pre-?harvest|re-?entry|precosecha|reingreso)\\b");
    private static final Pattern MATERIAL = pattern(
            "\\b(?:insecticides?|pesticides?|spray(?:s|ed|ing)?|dust with)\\b",
            "\\b(?:insecticidas?|plaguicidas?|pesticidas?|fumig\\p{L}+|aspers\\p{L}+)",
            "\\broc(?:iar|íe\\p{L}*|ían?)\\b");
    private static final Pattern ORDER = pattern(
            "\\b(?:cautions?|labels?|tiers?|instead of|skip|ignore|never mind|need not|no need|"
                    + "do(?:n['’]t| not) count|without counting)\\b",
            "\\b(?:precauci(?:ón|ones)|etiquetas?|en (?:lugar|vez) de|omita|no hace falta|no cuente|"
                    + "sin contar)\\b");

    /** What a text speaks of that is not an office's. */
    private record Spoken(String of, String words) {
    }

    private static Pattern pattern(String... words) {
        return Pattern.compile(String.join("|", words), Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE
                | Pattern.UNICODE_CHARACTER_CLASS);
    }

    @Override
    public String id() {
        return "local-note-facts";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        Optional<Pattern> names = names(base);
        for (Placed<Office> office : base.offices().values()) {
            for (int i = 0; i < office.value().notes().size(); i++) {
                LocalNote note = office.value().notes().get(i);
                int at = i;
                List<String> lengths = new ArrayList<>(List.of(note.text().pocket().words()));
                note.text().handbook().ifPresent(text -> lengths.add(text.words()));
                note.text().garden().ifPresent(text -> lengths.add(text.words()));
                lengths.stream().flatMap(words -> spoken(words, names).stream()).findFirst().ifPresent(one ->
                        found.accept(finding(one, office.at("notes", at, "text"))));
            }
            for (Translation translation : base.translations().values()) {
                passages(translation, "offices/" + office.value().id()).filter(passage ->
                        passage.path().startsWith("notes/")).forEach(passage -> passage.words()
                                .flatMap(words ->
                                spoken(words.words(), names)).ifPresent(one ->
                                        found.accept(finding(one, passage.place()))));
            }
        }
    }

    private static Stream<Translation.Passage> passages(Translation translation, String file) {
        return Stream.ofNullable(translation.files().get(file)).flatMap(page -> page.passages().stream());
    }

    private Finding finding(Spoken one, Span span) {
        return Finding.error(span, id(), "expected a local note without " + one.of() + ", found '"
                + one.words() + "'",
                "say only what is so here; a fact that is wrong belongs under 'requests:'");
    }

    private static Optional<Spoken> spoken(String words, Optional<Pattern> names) {
        return PrintedRate.in(words).map(rate -> new Spoken("a rate", rate))
                .or(() -> in(words, COUNT, "a count to act at"))
                .or(() -> in(words, WAIT, "a waiting time"))
                .or(() -> in(words, MATERIAL, "an insecticide, which never stands without its caution"))
                .or(() -> names.flatMap(known -> in(words, known,
                        "an active ingredient, which never stands without its caution")))
                .or(() -> in(words, ORDER, "words about cautions or the order of work"));
    }

    private static Optional<Spoken> in(String words, Pattern pattern, String what) {
        Matcher found = pattern.matcher(words);
        return found.find() ? Optional.of(new Spoken(what, found.group().strip())) : Optional.empty();
    }

    /** The materials of the base, in all languages. */
    private static Optional<Pattern> names(ContentBase base) {
        List<String> names = new ArrayList<>();
        base.materials().values().forEach(material -> names.add(Pattern.quote(material.value().name())));
        base.translations().values().stream().flatMap(translation ->
                passages(translation, "active-ingredients")).filter(passage -> passage.path()
                        .endsWith("/name"))
                .flatMap(passage -> passage.words().stream())
                .forEach(words -> names.add(Pattern.quote(words.words())));
        return names.isEmpty() ? Optional.empty()
                : Optional.of(pattern("\\b(?:" + String.join("|", names) + ")\\b"));
    }
}
