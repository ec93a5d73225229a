package org.fieldfold.handbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class HandbookTest {
    private static final Document ONE = Html.parse(Shipped.oneFile());

    @Test
    void everyEntryPracticeChapterAndOfficeIsInBothForms() {
        Set<String> wanted = new TreeSet<>(Shipped.BASE.pests().keySet());
        wanted.addAll(Shipped.BASE.enemies().keySet());
        wanted.addAll(Shipped.BASE.practices().keySet());
        Shipped.BASE.chapters().keySet().forEach(id -> wanted.add("read-" + id));
        Shipped.BASE.crops().keySet().forEach(id -> wanted.add("crop-" + id));
        Shipped.BASE.stations().keySet().forEach(id -> wanted.add("weeks-" + id));
        wanted.addAll(List.of("look", "crops", "count", "weeks", "offices", "materials", "cautions", "sources"));
        Set<String> ids = Html.all(ONE, "article").stream().map(page -> page.getAttribute("id"))
                .collect(Collectors.toCollection(TreeSet::new));
        assertTrue(ids.containsAll(wanted), () -> "missing from one file: " + minus(wanted, ids));
        Set<String> files = Shipped.folderPages(Shipped.FILES).stream().map(file -> file.path()
                .replaceAll("^handbook/en/|\\.html$", "")).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(ids, files);
        String offices = page("offices").getTextContent();
        Shipped.BASE.offices().values().forEach(office ->
                assertTrue(offices.contains(office.value().contact().phone()), office.value().name()));
        assertTrue(Html.all(page("offices"), "a").stream().anyMatch(a -> a.getAttribute("href")
                .equals("tel:555-0144")));
    }

    private static Set<String> minus(Set<String> all, Set<String> some) {
        Set<String> rest = new TreeSet<>(all);
        rest.removeAll(some);
        return rest;
    }

    private static Element page(String id) {
        return Html.all(ONE, "article").stream().filter(page -> page.getAttribute("id").equals(id))
                .findFirst().orElseThrow(() -> new AssertionError("no page " + id));
    }

    @Test
    void everyLinkOfTheOneFileLeadsToSomethingInIt() {
        Set<String> ids = Html.all(ONE, element -> element.hasAttribute("id")).stream()
                .map(element -> element.getAttribute("id")).collect(Collectors.toSet());
        Set<String> spanish = Html.all(Html.parse(Shipped.SPANISH.get(0)), element ->
                element.hasAttribute("id")).stream().map(element -> element.getAttribute("id"))
                .collect(Collectors.toSet());
        List<Element> links = Html.all(ONE, "a");
        assertTrue(links.size() > 500, "only " + links.size() + " links");
        for (Element link : links) {
            String href = link.getAttribute("href");
            assertTrue(href.startsWith("#") ? ids.contains(href.substring(1))
                    : href.startsWith("handbook.es.html#") ? spanish.contains(href.split("#")[1])
                    : isOutside(href), href);
        }
    }

    private static boolean isOutside(String href) {
        return href.matches("(https?://|mailto:|tel:).+");
    }

    @Test
    void everyLinkAndPictureOfTheFolderIsAFileInIt() {
        Set<String> paths = Shipped.FILES.stream().map(HandbookFile::path).collect(Collectors.toSet());
        Shipped.SPANISH.forEach(file -> paths.add(file.path()));
        Set<String> anchors = new TreeSet<>();
        List<String> targets = new ArrayList<>();
        for (HandbookFile file : Shipped.folderPages(Shipped.FILES)) {
            Document page = Html.parse(file);
            Html.all(page, element -> element.hasAttribute("id")).forEach(element ->
                    anchors.add(file.path() + "#" + element.getAttribute("id")));
            Html.all(page, element -> element.hasAttribute("href")).forEach(link ->
                    targets.add(link.getAttribute("href")));
            Html.all(page, "img").forEach(image -> targets.add(image.getAttribute("src")));
            Html.all(page, "img").forEach(image -> assertTrue(image.hasAttribute("alt"), file.path()));
        }
        targets.removeIf(HandbookTest::isOutside);
        for (String target : targets) {
            String path = Path.of("handbook/en").resolve(target.replaceFirst("#.*", "")).normalize()
                    .toString().replace('\\', '/') + target.replaceFirst("^[^#]*", "");
            assertTrue(target.contains("#") ? anchors.contains(path) : paths.contains(path), target);
        }
    }

    /** Tier order: 7 CFR 205.206 (a), (b), (e): prevention, then physical and biological, then materials. */
    @Test
    void everyEntryShowsItsTiersInOrderAndTheThirdBehindItsCaution() {
        for (Placed<PestEntry> placed : Shipped.BASE.pests().values()) {
            PestEntry pest = placed.value();
            List<Element> tiers = Html.classed(page(pest.id()), "tier");
            List<Integer> wanted = pest.controls().stream().map(Control::tier).distinct().sorted().toList();
            assertEquals(wanted, tiers.stream().map(HandbookTest::number).toList(), pest.id());
            for (Element tier : tiers) {
                long measures = Html.classed(tier, "measures").stream().mapToLong(list ->
                        Html.all(list, "li").size()).sum();
                assertEquals(pest.controls().stream().filter(one -> one.tier() == number(tier)).count(),
                        measures, pest.id());
                if (number(tier) == 3) {
                    String order = Html.all(tier, element -> !element.getAttribute("class").isEmpty())
                            .stream()
                            .map(element -> element.getAttribute("class")).collect(Collectors.joining(" "));
                    assertTrue(order.startsWith("tierhead caution gate measures"), pest.id() + ": " + order);
                    assertTrue(tier.getTextContent().contains("The label is the law"), pest.id());
                }
            }
        }
    }

    private static int number(Element tier) {
        return Integer.parseInt(tier.getAttribute("class").replaceAll("\\D", ""));
    }

    @Test
    void everyThresholdStandsThereWithItsSource() {
        for (Placed<PestEntry> placed : Shipped.BASE.pests().values()) {
            String text = page(placed.value().id()).getTextContent();
            placed.value().thresholds().forEach(threshold -> {
                threshold.value().ifPresent(value -> assertTrue(
                        text.contains(java.math.BigDecimal.valueOf(value).stripTrailingZeros()
                                .toPlainString()), placed.value().id() + " " + threshold.id()));
                threshold.source().ifPresent(source -> assertTrue(
                        text.contains(Shipped.BASE.sources().get(source).value().authors()),
                        placed.value().id() + " " + source));
            });
        }
    }

    @Test
    void sourcesThatDisagreeStandSideBySide() {
        Element table = Html.all(page("colorado-potato-beetle"), "table").stream()
                .filter(one -> one.getTextContent().startsWith("Sources disagree")).findFirst().orElseThrow();
        List<Element> cells = Html.all(table, "td");
        assertEquals(2, cells.size());
        assertTrue(cells.get(0).getTextContent().startsWith("50 adults"), cells.get(0).getTextContent());
        assertTrue(cells.get(1).getTextContent().startsWith("25 adults"), cells.get(1).getTextContent());
    }

    /** A thumb goes by the drawing: two crops with the same would be taken for each other. */
    @Test
    void noTwoCropsShareADrawing() {
        List<String> drawings = Html.classed(page("crops"), "frame").stream()
                .map(frame -> frame.getAttribute("class")).toList();
        assertEquals(Shipped.BASE.crops().size(), drawings.size());
        assertEquals(drawings.size(), Set.copyOf(drawings).size(), drawings.toString());
    }

    @Test
    void friendsStandInFrontOfAnyControl() {
        for (Placed<PestEntry> placed : Shipped.BASE.pests().values()) {
            String text = page(placed.value().id()).getTextContent();
            placed.value().spare().forEach(enemy -> {
                int friend = text.indexOf("a friend: leave it");
                assertTrue(friend >= 0 && friend < text.indexOf("1 Cultural"), placed.value().id());
            });
        }
    }

    @Test
    void everyPageSaysItsYearAndUntilWhenItHoldsAndThatItIsADemonstration() {
        for (Element page : Html.all(ONE, "article")) {
            assertDated(page, page.getAttribute("id"));
        }
        for (HandbookFile file : Shipped.folderPages(Shipped.FILES)) {
            assertDated(Html.parse(file).getDocumentElement(), file.path());
        }
    }

    private static void assertDated(Element page, String name) {
        String head = Html.classed(page, "head").get(0).getTextContent();
        assertTrue(head.contains("Edition 2027 · until January 31, 2028"), name + ": " + head);
        String foot = Html.classed(page, "foot").get(0).getTextContent();
        assertTrue(foot.contains("The label is the law") && foot.contains("Demonstration, not advice"), name);
    }

    @Test
    void aProofSaysSoOnEveryPage() {
        List<HandbookFile> proof = Shipped.pages(Handbook.write(Shipped.BASE, Shipped.PHRASES, true));
        for (HandbookFile file : proof) {
            for (Element page : Html.all(Html.parse(file), "article")) {
                assertEquals(1, Html.classed(page, "proof").size(), file.path());
            }
        }
        assertEquals(0, Html.classed(ONE, "proof").size());
    }

    /** Content Security Policy Level 3: an inline style runs when the policy names its SHA-256. */
    @Test
    void thePolicyForbidsEverythingButTheFilesOwnStyleScriptAndPictures() throws Exception {
        String style = Html.all(ONE, "style").get(0).getTextContent();
        // XML has read the marks of its section away; HTML keeps them, and hashes them
        String hash = sha256("/*<![CDATA[*/" + style.substring(4, style.length() - 4) + "/*]]>*/");
        String policy = Html.all(ONE, "meta").get(1).getAttribute("content");
        String script = Html.all(ONE, "script").get(0).getTextContent();
        String code = "//<![CDATA[" + script.substring(2, script.length() - 2) + "//]]>";
        assertEquals("default-src 'none'; base-uri 'none'; form-action 'none'; img-src data:; style-src "
                + "'sha256-" + hash + "'; script-src 'sha256-" + sha256(code) + "'", policy);
        assertEquals(1, Html.all(ONE, "script").size());
        assertFalse(script.contains("</") || script.contains("<!--") || script.contains("]]>"));
        assertTrue(Html.all(ONE, element -> element.hasAttribute("onclick")).isEmpty());
        assertTrue(Html.all(ONE, element -> element.hasAttribute("style")).isEmpty());
        assertFalse(style.replaceAll("data:[^\"]*", "").matches("(?s).*(https?:|@import).*"));
    }

    private static String sha256(String text) throws Exception {
        return Base64.getEncoder().encodeToString(MessageDigest.getInstance("SHA-256")
                .digest(text.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void drawingsSayWhatTheyShow() {
        Shipped.BASE.figures().values().forEach(figure -> assertTrue(Html.all(ONE, element ->
                element.getAttribute("aria-label").equals(figure.value().note().alt().orElseThrow()))
                .size() > 0 || !Shipped.BASE.pests().containsKey(figure.value().note().shows().entry())
                        && !Shipped.BASE.enemies().containsKey(figure.value().note().shows().entry()),
                figure.value().id()));
    }

    @Test
    void theSameContentGivesTheSameBytesInAnyLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(new Locale("tr", "TR"));
            List<HandbookFile> again = Handbook.write(Shipped.BASE, Shipped.PHRASES, false);
            assertEquals(Shipped.FILES.size(), again.size());
            for (int i = 0; i < again.size(); i++) {
                assertEquals(Shipped.FILES.get(i).path(), again.get(i).path());
                assertArrayEquals(Shipped.FILES.get(i).bytes(), again.get(i).bytes(), again.get(i).path());
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    /** The budget is ours: a telephone on a bad line should get the file in one go. */
    @Test
    void theOneFileStaysUnderFifteenHundredThousandBytesInEitherLanguage() {
        long folder = Shipped.FILES.stream().skip(1).mapToLong(file -> file.bytes().length).sum();
        System.out.printf(Locale.ROOT, "handbook: one file %,d bytes; folder %,d files, %,d bytes%n",
                Shipped.oneFile().bytes().length, Shipped.FILES.size() - 1, folder);
        for (HandbookFile file : List.of(Shipped.oneFile(), Shipped.SPANISH.get(0))) {
            assertTrue(file.bytes().length < 1_500_000, file.path() + ": " + file.bytes().length + " bytes");
        }
    }

    /** Every page has its counterpart in the other language, and leads to it. */
    @Test
    void aPageLeadsToTheSamePageInTheOtherLanguage() {
        List<HandbookFile> english = Shipped.folderPages(Shipped.FILES);
        Set<String> spanish = Shipped.folderPages(Shipped.SPANISH).stream().map(HandbookFile::path)
                .collect(Collectors.toSet());
        assertEquals(english.stream().map(file -> file.path().replace("handbook/en/", "handbook/es/"))
                .collect(Collectors.toSet()), spanish);
        for (HandbookFile file : english) {
            String name = file.path().substring("handbook/en/".length());
            List<Element> switches = Html.all(Html.parse(file), "a").stream()
                    .filter(link -> link.getAttribute("class").equals("tongue")).toList();
            assertEquals(1, switches.size(), name);
            assertEquals("../es/" + name, switches.get(0).getAttribute("href"));
            assertEquals("es", switches.get(0).getAttribute("hreflang"));
            assertEquals("Español", switches.get(0).getTextContent());
        }
    }

    /** A complete translation shows no word in the base language, so no page has the mark of one. */
    @Test
    void noSpanishPageHasAGap() {
        for (HandbookFile file : Shipped.pages(Shipped.SPANISH)) {
            Document page = Html.parse(file);
            assertEquals("es", page.getDocumentElement().getAttribute("lang"), file.path());
            assertFalse(page.getDocumentElement().getTextContent().contains("[en]"), file.path());
        }
    }

    /** WCAG 2.2, 3.1.2: a title that stays in its own language says so; one that is translated does not. */
    @Test
    void titlesOfPublicationsSayTheirLanguage() {
        HandbookFile sources = Shipped.folderPages(Shipped.SPANISH).stream()
                .filter(file -> file.path().endsWith("/sources.html")).findFirst().orElseThrow();
        String page = new String(sources.bytes(), StandardCharsets.UTF_8);
        assertTrue(page.contains("<span lang=\"en\"><em>Mode of Action Classification Scheme</em></span>"));
        assertTrue(page.contains("<em>Práctica de productores y asesores, sin publicación</em>"));
        assertFalse(page.contains("<span lang=\"en\"><em>Práctica"));
    }
}
