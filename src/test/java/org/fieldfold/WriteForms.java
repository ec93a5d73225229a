package org.fieldfold;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.pdf.Press;
import org.fieldfold.typeset.PrintMeFirst;

/** Prints all forms of some guides into a folder, to be looked at: {@code WriteForms target/forms potato}. */
final class WriteForms {
    private WriteForms() {
    }

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        ContentBase base = BaseLoader.load(Path.of("content")).base().orElseThrow();
        Map<String, byte[]> figures = new HashMap<>(PrintMeFirst.figures());
        base.figures().values().forEach(figure ->
                figures.put(figure.value().id(), figure.value().bytes()));
        Press press = Press.of(figures);
        List<Form> forms = new ArrayList<>();
        for (int i = 1; i < arguments.length; i++) {
            forms.addAll(new Forms(base, press, false).of(base.guides().get(arguments[i]), Phrases.in("en"),
                    "letter"));
        }
        forms.addAll(new AllForms(base, press, false).first("en"));
        forms.addAll(new AllForms(base, press, true).first("es"));
        Set<Integer> characters = new TreeSet<>();
        forms.forEach(form -> characters.addAll(form.job().characters()));
        press.freeze(characters);
        for (Form form : forms) {
            Path file = folder.resolve(form.path());
            Files.createDirectories(file.getParent());
            Files.write(file, press.print(form.job()));
            System.out.println(form.path() + " " + form.paper() + " " + form.job().guide().typeSize()
                    + " pt " + form.findings());
        }
    }
}
