package org.fieldfold.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.edition.Change;
import org.fieldfold.edition.ChangeGroup;
import org.fieldfold.edition.Comparison;
import org.fieldfold.edition.Job;
import org.fieldfold.edition.Rereadings;
import org.fieldfold.edition.WorkReason;
import org.fieldfold.edition.Worklist;
import org.fieldfold.entry.Edition;
import org.fieldfold.report.FitRow;
import org.fieldfold.report.Reading;
import org.fieldfold.report.ReadingRow;
import org.fieldfold.source.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The Nu HTML checker (nu.validator 26.5.2), as a process of its own, over everything that is written. */
class NuCheckerTest {
    @TempDir
    Path folder;

    @Test
    void findsNoErrorOnAnyPage() throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin",
                "java").toString(), "-Xss4m", "-cp", System.getProperty("java.class.path"),
                "nu.validator.client.SimpleCommandLineValidator", "--errors-only", "--format", "json"));
        List<HandbookFile> pages = new ArrayList<>(Shipped.pages(Shipped.FILES));
        pages.addAll(Shipped.pages(Shipped.SPANISH));
        pages.add(new HandbookFile("review/index.html", review()));
        Edition edition = Shipped.BASE.edition().value();
        Change change = new Change(ChangeGroup.THRESHOLDS, "pests", "x", "a <pest>", "threshold", "", "",
                List.of(new Change.Part("", Optional.of("3"), Optional.of("2 & more"), "per leaf")));
        pages.add(new HandbookFile("review/changes.html", ChangesPage.write(edition,
                Optional.of(new Comparison("2026", "2027", List.of(change))), true)));
        pages.add(new HandbookFile("review/none.html", ChangesPage.write(edition, Optional.empty(), false)));
        pages.add(new HandbookFile("review/worklist.html", WorklistPage.write(edition, new Worklist(2027, 2, 1, 0,
                List.of("avery"), List.of(new Job("x", "a <pest>", "pests/x.yaml", Optional.of("avery"),
                        Optional.empty(), true, true, List.of(new Job.Why(WorkReason.LABEL, "a & b"))))),
                false)));
        pages.add(new HandbookFile("review/reading.html", ReadingPage.write(edition, List.of(new Reading("en",
                List.of(new ReadingRow("Potato", 3.2, true, "1 of 9")), List.of())), false)));
        pages.add(new HandbookFile("review/thresholds.html", ThresholdsPage.write(Shipped.BASE, true)));
        pages.add(new HandbookFile("review/figures.html", FiguresPage.write(Shipped.BASE, true)));
        pages.add(new HandbookFile("review/weeks.html", CalendarReviewPage.write(Shipped.BASE,
                new Calendars(Shipped.BASE), true)));
        for (HandbookFile page : pages) {
            Path file = folder.resolve(page.path());
            Files.createDirectories(file.getParent());
            Files.write(file, page.bytes());
            command.add(file.toString());
        }
        assertEquals("{\"version\":\"26.5.2\",\"messages\":[]}", judge(command));
    }

    @Test
    void findsAnErrorWhereThereIsOne() throws IOException, InterruptedException {
        Path file = folder.resolve("wrong.html");
        Files.writeString(file, "<!DOCTYPE html><html lang=\"en\"><title>x</title><p><div></p></html>");
        List<String> command = List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp",
                System.getProperty("java.class.path"), "nu.validator.client.SimpleCommandLineValidator",
                "--errors-only", "--format", "json", file.toString());
        assertTrue(judge(command).contains("\"type\":\"error\""));
    }

    private static String judge(List<String> command) throws IOException, InterruptedException {
        Process checker = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(checker.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        assertTrue(checker.waitFor(5, TimeUnit.MINUTES));
        return said;
    }

    private static byte[] review() {
        return ReviewPage.write(Shipped.BASE, Rereadings.of(Shipped.BASE, Optional.empty()),
                List.of(Finding.warning(Shipped.BASE.edition().at("title"), "a-rule",
                        "expected <this>, found that & 'those'", "mend it")), List.of(
                        new FitRow("potato", "letter", 3, "colorado-potato-beetle", 1.02, 7.5, 10,
                                List.of(new FitRow.Form("damage/0", true)), Optional.empty())), true);
    }
}
