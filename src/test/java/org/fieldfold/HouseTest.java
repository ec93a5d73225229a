package org.fieldfold;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The house: which package may use which, and that nothing runs in a circle. DEVELOPERS.md shows the same
 * table.
 */
class HouseTest {
    private static final String ROOT = "org.fieldfold";
    private static final JavaClasses CODE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS).importPackages(ROOT);

    /** A package may use those on its row and the JDK; the root package may use all but the command line. */
    static final Map<String, List<String>> MAY_USE = new LinkedHashMap<>();

    static {
        MAY_USE.put("source", List.of());
        MAY_USE.put("prose", List.of());
        MAY_USE.put("scouting", List.of());
        MAY_USE.put("fold", List.of());
        MAY_USE.put("report", List.of("source"));
        MAY_USE.put("kept", List.of("source", "report"));
        MAY_USE.put("output", List.of("report"));
        MAY_USE.put("entry", List.of("source", "prose", "scouting", "fold"));
        MAY_USE.put("translation", List.of("source", "prose", "entry"));
        MAY_USE.put("trace", List.of("source", "entry"));
        MAY_USE.put("calendar", List.of("scouting", "entry"));
        MAY_USE.put("content", List.of("source", "prose", "scouting", "fold", "entry", "translation",
                "report"));
        MAY_USE.put("edition", List.of("source", "prose", "scouting", "entry", "translation", "trace",
                "report"));
        MAY_USE.put("check", List.of("source", "prose", "scouting", "fold", "entry", "calendar",
                "translation", "trace", "report"));
        MAY_USE.put("manuscript", List.of("source", "prose", "scouting", "entry", "calendar", "edition",
                "trace"));
        MAY_USE.put("typeset", List.of("source", "prose", "fold", "manuscript"));
        MAY_USE.put("pdf", List.of("fold", "manuscript", "typeset"));
        MAY_USE.put("handbook", List.of("source", "prose", "scouting", "entry", "calendar", "edition",
                "manuscript", "report", "kept"));
        MAY_USE.put("preview", List.of("typeset"));
        MAY_USE.put("pack", List.of("fold", "typeset", "handbook"));
    }

    /** Libraries that stay behind one package each. */
    private static final Map<String, String> ONLY_USER = Map.of(
            "org.apache.pdfbox", "pdf", "com.github.weisj.jsvg", "pdf", "com.google.zxing", "pdf",
            "com.vladsch.flexmark", "content", "org.snakeyaml", "content", "org.thymeleaf", "handbook",
            "picocli", "cli");

    @Test
    void everyPackageHasARow() {
        Set<String> found = CODE.stream().map(type -> stage(type.getPackageName()))
                .filter(name -> !name.isEmpty() && !name.equals("cli"))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(MAY_USE.keySet()), found);
    }

    @Test
    void packagesUseOnlyThoseOnTheirRow() {
        MAY_USE.forEach((name, others) -> {
            Set<String> forbidden = new TreeSet<>(MAY_USE.keySet());
            forbidden.removeAll(others);
            forbidden.remove(name);
            forbidden.add("cli");
            String[] names = forbidden.stream().map(other -> ROOT + "." + other + "..")
                    .toArray(String[]::new);
            noClasses().that().resideInAPackage(ROOT + "." + name + "..").should().dependOnClassesThat()
                    .resideInAnyPackage(names).check(CODE);
            noClasses().that().resideInAPackage(ROOT + "." + name + "..").should().dependOnClassesThat()
                    .resideInAPackage(ROOT).check(CODE);
        });
    }

    @Test
    void nothingRunsInACircle() {
        slices().matching(ROOT + ".(*)..").should().beFreeOfCycles().check(CODE);
    }

    @Test
    void librariesStayBehindTheirPackage() {
        ONLY_USER.forEach((library, user) -> noClasses().that()
                .resideOutsideOfPackage(ROOT + "." + user + "..")
                .should().dependOnClassesThat().resideInAPackage(library + "..").check(CODE));
    }

    @Test
    void outputsDependOnNoClockChanceOrMachine() {
        noClasses().that().resideOutsideOfPackage(ROOT + ".cli..").should()
                .callMethod(System.class, "currentTimeMillis").orShould().callMethod(Math.class, "random")
                .orShould().callMethod(java.time.LocalDate.class, "now").orShould()
                .callMethod(java.time.Instant.class, "now").orShould()
                .callMethod(java.util.Locale.class, "getDefault")
                .orShould().callMethod(java.nio.charset.Charset.class, "defaultCharset")
                .orShould().callMethod(String.class, "toLowerCase").orShould()
                .callMethod(String.class, "toUpperCase")
                .orShould().callMethod(Math.class, "sin", double.class).orShould()
                .callMethod(Math.class, "cos", double.class).orShould().callMethod(Math.class, "pow",
                        double.class, double.class).orShould().callMethod(Math.class, "log", double.class)
                .orShould().callMethod(Math.class, "exp", double.class).check(CODE);
    }

    @Test
    void everyPackageSaysWhatItIs() {
        for (String name : MAY_USE.keySet()) {
            String file = "src/main/java/org/fieldfold/" + name + "/package-info.java";
            assertTrue(Files.exists(Path.of(file)), file);
        }
    }

    private static String stage(String packageName) {
        String below = packageName.length() > ROOT.length() ? packageName.substring(ROOT.length() + 1) : "";
        return below.contains(".") ? below.substring(0, below.indexOf('.')) : below;
    }
}
