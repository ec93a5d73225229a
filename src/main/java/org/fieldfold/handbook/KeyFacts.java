package org.fieldfold.handbook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.DamageSign;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.LifeStage;
import org.fieldfold.entry.LookAlike;
import org.fieldfold.entry.Names;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.PlantPart;
import org.fieldfold.manuscript.CropFigures;
import org.fieldfold.manuscript.Phrases;

/** What the key to an entry goes by: crops, plant parts and signs, stages, look-alikes and friends. */
final class KeyFacts {
    private final ContentBase base;
    private final Phrases phrases;
    private final Form form;
    private final Map<String, String> crops = new LinkedHashMap<>();
    private final Map<String, String> parts = new LinkedHashMap<>();
    private final Map<String, String> signs = new LinkedHashMap<>();
    private final Map<String, String> stages = new LinkedHashMap<>();

    KeyFacts(ContentBase base, Phrases phrases, Form form) {
        this.base = base;
        this.phrases = phrases;
        this.form = form;
    }

    List<Map<String, Object>> entries() {
        List<Map<String, Object>> entries = new ArrayList<>();
        base.pests().values().forEach(placed -> entries.add(entry(placed.value())));
        return entries;
    }

    /** What is called how, of all that {@link #entries} named, and the drawing that stands for each crop. */
    Map<String, Object> names() {
        Map<String, Object> names = new LinkedHashMap<>();
        names.put("crop", crops);
        names.put("part", inOrder(parts, PlantPart.values()));
        names.put("sign", inOrder(signs, DamageSign.values()));
        names.put("stage", inOrder(stages, LifeStage.values()));
        Map<String, String> pictures = new LinkedHashMap<>();
        CropFigures.of(base).forEach((crop, figure) -> form.drawn(figure)
                .ifPresent(drawn -> pictures.put(crop, drawn)));
        names.put("pic", pictures);
        return names;
    }

    private static Map<String, String> inOrder(Map<String, String> names, Enum<?>[] all) {
        Map<String, String> sorted = new LinkedHashMap<>();
        Arrays.stream(all).map(ScriptFacts::word).filter(names::containsKey)
                .forEach(word -> sorted.put(word, names.get(word)));
        return sorted;
    }

    private Map<String, Object> entry(PestEntry pest) {
        Map<String, Object> said = new LinkedHashMap<>();
        said.put("href", href(pest.id()));
        said.put("name", Phrases.capital(pest.names().common()));
        List<Figure> figures = base.figuresOf(pest.id(), pest.figures(), pest.stages());
        said.put("pic", drawing(figures, false));
        said.put("damage", drawing(figures, true));
        pest.crops().forEach(crop -> crops.put(crop, base.crops().containsKey(crop)
                ? base.crops().get(crop).value().name() : crop));
        said.put("crops", pest.crops());
        List<List<String>> seen = new ArrayList<>();
        pest.damage().forEach(one -> {
            String part = ScriptFacts.word(one.part());
            String sign = ScriptFacts.word(one.sign());
            parts.put(part, phrases.word("part", one.part()));
            signs.put(sign, phrases.word("sign", one.sign()));
            seen.add(List.of(part, sign, one.text().pocket().words()));
        });
        said.put("seen", seen);
        pest.stages().forEach(stage -> stages.put(ScriptFacts.word(stage.stage()),
                phrases.word("stage", stage.stage())));
        said.put("stages", pest.stages().stream().map(stage -> ScriptFacts.word(stage.stage())).distinct().toList());
        said.put("not", ways(pest.lookAlikes().stream().map(LookAlike::entry).toList()));
        said.put("friends", ways(pest.spare()));
        return said;
    }

    private String drawing(List<Figure> figures, boolean damage) {
        return figures.stream().filter(figure -> figure.note().shows().showsDamage() == damage).findFirst()
                .or(() -> damage ? Optional.empty() : figures.stream().findFirst())
                .flatMap(figure -> form.drawn(figure.id())).orElse("");
    }

    private String href(String id) {
        return form.href("#" + id).orElse("#");
    }

    /** Name and address of each. */
    private List<List<String>> ways(List<String> ids) {
        return ids.stream().filter(id -> form.href("#" + id).isPresent())
                .map(id -> List.of(name(id), href(id))).toList();
    }

    private String name(String id) {
        return Optional.ofNullable(base.pests().get(id)).map(Placed::value).map(PestEntry::names)
                .or(() -> Optional.ofNullable(base.enemies().get(id)).map(enemy -> enemy.value().names()))
                .map(Names::common).orElse(id);
    }
}
