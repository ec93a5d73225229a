package org.fieldfold;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/** Saves as they come while somebody works on a base: texts, numbers, moved lines, files that come and go. */
final class RandomSaves {
    private static final Path DEMO = Path.of("content");
    private static final String SCHEME = "scheme roll-9\ntitle Roll\nsheet landscape\ncolumns 1 1 1 1\nrows 1\n"
            + "fold x3 right over\nfold x2 right over\nfold x1 left over\n";
    private final Path content;

    RandomSaves(Path content) {
        this.content = content;
    }

    /** Saves something and says what. */
    String save(Random random) throws IOException {
        Path file = pick(random);
        String was = Files.readString(file);
        String edited = switch (random.nextInt(16)) {
            case 0, 1, 2 -> line(file, random, was, line -> line.matches(".*[a-z]\\.") ? line
                    + " Spray 3 oz per acre of Killitol® twice, if need be and if nothing else can be done about it."
                    : line + " 7");
            case 3, 4 -> line(file, random, was, line ->
                    line.replaceFirst("[1-8]", String.valueOf(random.nextInt(9) + 1)));
            case 5 -> "# moved\n" + was;
            case 6 -> line(file, random, was, line -> "");
            case 7 -> line(file, random, was, line -> line + " [[");
            case 8 -> line(file, random, was, line -> line.replaceFirst("[a-z]{3,}", "onion-maggot"));
            case 9 -> gone(file, random);
            case 10, 11, 12, 13 -> Files.exists(demo(file)) ? Files.readString(demo(file)) : was;
            default -> come(random, was);
        };
        if (!edited.isEmpty()) {
            Files.writeString(file, edited);
        }
        return content.relativize(file) + " from\n" + was + "\nto\n" + edited;
    }

    private interface Edit {
        String of(String line);
    }

    private static String line(Path file, Random random, String text, Edit edit) {
        List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
        int at = random.nextInt(lines.size());
        String line = edit.of(lines.get(at));
        if (line.isEmpty()) {
            lines.remove(at);
        } else {
            lines.set(at, line);
        }
        return String.join("\n", lines);
    }

    /** A file that goes; the edition stays, as without it there is nothing to judge. */
    private String gone(Path file, Random random) throws IOException {
        if (!file.equals(content.resolve("edition.yaml"))) {
            Files.delete(file);
            return "";
        }
        return Files.readString(demo(file)) + "\n# " + random.nextInt(9) + "\n";
    }

    /** A file that comes: one of the demo base that is not there, a copy of an entry, a scheme, or its title. */
    private String come(Random random, String same) throws IOException {
        List<Path> missing;
        try (Stream<Path> all = Files.walk(DEMO)) {
            missing = all.filter(Files::isRegularFile).filter(file ->
                    !Files.exists(content.resolve(DEMO.relativize(file).toString()))).sorted().toList();
        }
        int kind = random.nextInt(4);
        if (kind == 0) {
            save("schemes/roll-9.fold", SCHEME.replace("Roll", "Roll " + random.nextInt(5)));
        } else if (kind == 1) {
            save("pests/other-moth.yaml", Files.readString(DEMO.resolve("pests/leek-moth.yaml"))
                    .replace("id: leek-moth", "id: other-moth"));
        } else if (!missing.isEmpty()) {
            Path file = missing.get(random.nextInt(missing.size()));
            save(DEMO.relativize(file).toString(), Files.readString(file));
        }
        return same;
    }

    private void save(String file, String text) throws IOException {
        Files.createDirectories(content.resolve(file).getParent());
        Files.writeString(content.resolve(file), text);
    }

    private Path demo(Path file) {
        return DEMO.resolve(content.relativize(file).toString());
    }

    /** Pests most often, then lists that many rules read. */
    private Path pick(Random random) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(content)) {
            files = all.filter(file -> file.toString().matches(".*[.](yaml|svg|csv|md|json|fold)")).sorted().toList();
        }
        String among = switch (random.nextInt(6)) {
            case 0, 1 -> "content/pests/";
            case 2 -> "content/es/";
            case 3 -> ".yaml";
            case 4 -> "s.yaml";
            default -> "";
        };
        List<Path> some = files.stream().filter(file -> file.toString().contains(among)).toList();
        return some.get(random.nextInt(some.size()));
    }
}
