package org.fieldfold.handbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.fieldfold.entry.Contact;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.DegreeDayEvent;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Monitoring;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.scouting.degreeday.HeatModel;

/** What the script needs to know: words, dates, and every number. Most of it is the same in all forms. */
final class ScriptFacts {
    private static final List<String> ORDER = List.of("prefix", "oneFile", "year", "edition", "until", "untilWords",
            "offices", "counts", "seen", "names", "words", "months", "models", "bodies", "materials", "pages");

    private final ContentBase base;
    private final Phrases phrases;
    private final Map<String, Json.Written> common = new LinkedHashMap<>();

    ScriptFacts(ContentBase base, Phrases phrases) {
        this.base = base;
        this.phrases = phrases;
        common.put("offices", Json.Written.of(offices()));
        common.put("counts", Json.Written.of(new CountFacts(base, phrases).all()));
        common.put("models", Json.Written.of(models()));
        common.put("bodies", Json.Written.of(bodies()));
        common.put("materials", Json.Written.of(materials()));
    }

    /** What all forms have in common, but for words and months, which are the program's own. */
    List<String> common() {
        return common.values().stream().map(Json.Written::json).toList();
    }

    /**
     * What a form has of its own.
     *
     * @param pages address, name and kind of each, as in the index
     */
    Map<String, Object> own(List<List<String>> pages, KeyFacts key, boolean oneFile) {
        Edition edition = base.edition().value();
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("prefix", "fieldfold." + edition.year() + "." + phrases.language() + ".");
        facts.put("oneFile", oneFile);
        facts.put("year", edition.year());
        facts.put("edition", edition.title() + ". " + phrases.say("book.edition.short", edition.year(),
                phrases.date(edition.validUntil())));
        facts.put("until", edition.validUntil().toString());
        facts.put("untilWords", phrases.date(edition.validUntil()));
        facts.put("seen", Json.Written.of(key.entries()));
        facts.put("names", Json.Written.of(key.names()));
        facts.put("pages", Json.Written.of(pages));
        return facts;
    }

    /** All of it, as JSON. */
    String all(Map<String, Object> own, String index) {
        Map<String, Object> facts = new LinkedHashMap<>();
        for (String name : ORDER) {
            facts.put(name, own.containsKey(name) ? own.get(name) : common.get(name));
        }
        facts.put("words", words());
        facts.put("months", months());
        facts.put("index", index);
        return Json.of(facts);
    }

    private Map<String, String> words() {
        Map<String, String> words = new LinkedHashMap<>(phrases.under("script."));
        words.put("date", phrases.say("date"));
        return words;
    }

    /** The county offices, then the publisher, who answers for those who chose none. */
    private List<Map<String, Object>> offices() {
        List<Map<String, Object>> offices = new ArrayList<>();
        base.offices().values().forEach(placed -> offices.add(office(placed.value().id(), placed.value().name(),
                placed.value().county(), placed.value().contact())));
        Edition edition = base.edition().value();
        offices.add(office("", edition.publisher(), "", edition.contact()));
        return offices;
    }

    private static Map<String, Object> office(String id, String name, String county, Contact contact) {
        Map<String, Object> said = new LinkedHashMap<>();
        said.put("id", id);
        said.put("name", name);
        said.put("county", county);
        said.put("phone", contact.phone());
        said.put("email", contact.email());
        return said;
    }

    private List<String> months() {
        List<String> months = new ArrayList<>();
        for (int month = 1; month <= 12; month++) {
            months.add(phrases.say("month." + month));
        }
        return months;
    }

    /** Every way in which some entry sums warmth. */
    private List<Map<String, Object>> models() {
        List<Map<String, Object>> models = new ArrayList<>();
        for (Placed<PestEntry> pest : base.pests().values()) {
            for (Monitoring look : pest.value().monitoring()) {
                for (DegreeDayEvent event : look.season().map(season -> season.events()).orElse(List.of())) {
                    event.model().ifPresent(model -> models.add(model(pest.value(), event, model)));
                }
            }
        }
        return models;
    }

    private static Map<String, Object> model(PestEntry pest, DegreeDayEvent event, HeatModel model) {
        Map<String, Object> said = new LinkedHashMap<>();
        said.put("entry", Phrases.capital(pest.names().common()));
        said.put("event", event.event());
        said.put("start", event.start().map(day -> day.toString().substring(2)).orElse(""));
        said.put("biofix", event.start().isPresent() ? "" : event.biofix().orElse(""));
        said.put("sum", event.sum());
        said.put("unit", event.unit().name());
        said.putAll(numbers(model));
        return said;
    }

    /** A model as {@code warmth.js} takes it. */
    static Map<String, Object> numbers(HeatModel model) {
        Map<String, Object> said = new LinkedHashMap<>();
        said.put("lower", model.lower());
        said.put("upper", model.upper().isEmpty() ? java.util.Optional.empty() : model.upper().getAsDouble());
        said.put("method", word(model.method()));
        said.put("cutoff", word(model.cutoff()));
        return said;
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private List<List<Object>> bodies() {
        return base.pests().values().stream().map(Placed::value).flatMap(pest -> pest.netBody().stream()
                .map(body -> List.<Object>of(pest.names().common(), body.largestHoleMm()))).toList();
    }

    private List<List<Object>> materials() {
        return base.materials().values().stream().map(Placed::value)
                .flatMap(material -> material.waitingTimes().stream().map(times -> List.<Object>of(material.name(),
                        times.reentryHours().shortest(), times.reentryHours().longest(),
                        times.preHarvestDays().shortest(), times.preHarvestDays().longest()))).toList();
    }
}
