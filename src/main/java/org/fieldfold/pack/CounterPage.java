package org.fieldfold.pack;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.FoldScheme;
import org.fieldfold.fold.Side;
import org.fieldfold.handbook.Markup;

/** The page that a helper at an office's counter opens: what to print, on which paper, how to fold it. */
public final class CounterPage {
    private static final String LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    private final Facts facts;
    private final PackWords words;
    private final Markup out = new Markup();

    /**
     * What the page is about.
     *
     * @param firstSheet name of the sheet that is printed before all others
     * @param otherFirstSheet name of the same for copiers that turn the sheet on the other edge
     * @param paper id of the paper
     * @param notice that this is no real advice, where it is not
     * @param proof whether findings stand
     */
    public record Facts(Desk office, int year, String validUntil, String firstSheet, String otherFirstSheet,
            String paper, FlipEdge flip, Optional<String> notice, boolean proof, List<Handout> handouts) {
    }

    private CounterPage(Facts facts, PackWords words) {
        this.facts = facts;
        this.words = words;
    }

    public static String write(Facts facts, PackWords words) {
        return new CounterPage(facts, words).write();
    }

    private String write() {
        String title = words.say("title", facts.office().name(), facts.year());
        out.open("html", "lang", words.language()).line().open("head").empty("meta", "charset", "utf-8")
                .empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1")
                .element("title", title).open("style").text(style()).close().close().line().open("body");
        out.open("header");
        if (facts.proof()) {
            out.element("p", words.say("proof"), "class", "proof");
        }
        out.element("h1", words.say("need")).element("p", title);
        out.element("p", words.say("holds", facts.validUntil()), "class", "holds");
        out.close().line().open("main").line();
        how();
        Map<FoldScheme, String> schemes = schemes();
        out.open("ul", "class", "handouts").line();
        facts.handouts().forEach(handout -> handout(handout, schemes.get(handout.sheet().scheme())));
        out.close().line();
        folding(schemes);
        desk();
        out.close().line().open("footer");
        facts.notice().ifPresent(notice -> out.element("p", notice));
        out.element("p", words.say("label")).close().line().close().close().line();
        return "<!DOCTYPE html>\n" + out;
    }

    private void how() {
        out.open("section", "class", "how").element("h2", words.say("how"));
        out.open("ol").open("li").text(words.say("how.paper") + " ").element("b", paper())
                .text(", ").element("b", words.say("size")).close();
        out.open("li").text(words.say("how.both") + " ").element("b", edge()).close();
        out.element("li", words.say("how.fold"));
        out.open("li").text(words.say("how.first") + " ").element("a", facts.firstSheet(), "href",
                facts.firstSheet()).text(". " + words.say("how.other") + " ").element("a", words.say("how.otherwise"),
                "href", facts.otherFirstSheet()).text(".").close();
        out.element("li", words.say("how.last", facts.year() - 1)).close().close().line();
    }

    private String paper() {
        return words.say("paper." + facts.paper());
    }

    private String edge() {
        return words.say(facts.flip() == FlipEdge.SHORT ? "edge.short" : "edge.long");
    }

    private String turned() {
        return words.say(facts.flip() == FlipEdge.SHORT ? "turn.short" : "turn.long");
    }

    /** Whom to call, to write to and to send people to, when no sheet answers. */
    private void desk() {
        Desk office = facts.office();
        out.open("section", "class", "desk").element("h2", office.name());
        out.open("p").element("b", office.phone()).text(" · " + office.hours()).close();
        out.element("p", String.join(", ", office.address()) + " · " + office.email());
        if (!office.people().isEmpty()) {
            out.element("p", words.say("people", String.join(", ", office.people())));
        }
        out.close().line();
    }

    /** Each scheme with its letter, in the order of the handouts. */
    private Map<FoldScheme, String> schemes() {
        Map<FoldScheme, String> schemes = new LinkedHashMap<>();
        for (Handout handout : facts.handouts()) {
            int next = schemes.size();
            schemes.computeIfAbsent(handout.sheet().scheme(), scheme -> next < LETTERS.length()
                    ? LETTERS.substring(next, next + 1) : Integer.toString(next + 1));
        }
        return schemes;
    }

    private void handout(Handout handout, String fold) {
        boolean oneSided = handout.sheet().scheme().oneSided();
        out.open("li").open("div", "class", "sketches");
        SheetSketch.write(out, handout.sheet(), Side.FRONT, handout.title(), handout.miniature(), words);
        if (!oneSided) {
            SheetSketch.write(out, handout.sheet(), Side.BACK, handout.title(), handout.miniature(), words);
        }
        out.close().open("div").element("h2", handout.title());
        out.open("p").element("b", words.say("for", String.join(", ", handout.crops()))).text(" "
                + String.join(", ", handout.entries()) + ".").close();
        own("without", handout.without());
        own("noted", handout.noted());
        out.open("p", "class", "print");
        for (Handout.Copy copy : handout.copies()) {
            String language = words.say("language." + copy.language());
            out.element("a", words.say("print", language), "href", copy.file(), "hreflang", copy.language())
                    .text(" ");
        }
        out.close().open("p", "class", "so").text(paper() + " · "
                + (oneSided ? words.say("one-sided") : words.say("both-sides", turned())) + " · ")
                .element("a", words.say("fold", fold), "href", "#" + anchor(fold), "class", "fold").close();
        more("large-print", handout.copies(), Handout.Copy::largePrint);
        more("poster", handout.copies(), Handout.Copy::poster);
        more("calendar", handout.copies(), Handout.Copy::calendar);
        out.close().close().line();
    }

    /** What else there is of a guide, beside its foldout, in each language. */
    private void more(String kind, List<Handout.Copy> copies, Function<Handout.Copy, String> file) {
        List<Handout.Copy> there = copies.stream().filter(copy -> !file.apply(copy).isBlank()).toList();
        if (there.isEmpty()) {
            return;
        }
        out.open("p", "class", "more " + kind).text(words.say(kind));
        for (Handout.Copy copy : there) {
            out.text(" ").element("a", words.say("language." + copy.language()), "href", file.apply(copy),
                    "hreflang", copy.language());
        }
        out.close();
    }

    private static String anchor(String fold) {
        return "fold-" + fold.toLowerCase(Locale.ROOT);
    }

    /** What this office changed: a helper must know it when somebody asks for what is not there. */
    private void own(String kind, List<String> names) {
        if (!names.isEmpty()) {
            out.element("p", words.say(kind, String.join(", ", names)), "class", kind);
        }
    }

    private void folding(Map<FoldScheme, String> schemes) {
        out.open("section", "class", "folds");
        List<FoldScheme> told = new ArrayList<>();
        for (Handout handout : facts.handouts()) {
            FoldScheme scheme = handout.sheet().scheme();
            if (!told.contains(scheme)) {
                told.add(scheme);
                String fold = words.say("fold", schemes.get(scheme));
                out.open("div", "id", anchor(schemes.get(scheme))).element("h2", fold);
                SheetSketch.folding(out, handout.sheet(), words.say("sketch.fold", fold));
                out.open("ol");
                FoldingWords.of(handout.sheet(), words).forEach(step -> out.element("li", step));
                out.close().close().line();
            }
        }
        out.close().line();
    }

    private static String style() {
        try (InputStream in = CounterPage.class.getResourceAsStream("counter.css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
