package org.fieldfold.handbook;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fieldfold.manuscript.Leaf;

/**
 * A form that notes whatever a page asks of it, with the answers: addresses, drawings, columns, all that depends on
 * other pages. Asked the same again, and answering alike, it would be given the same page.
 */
final class AskedForm implements Form {
    private final Form form;
    private final Map<Asked, String> told = new LinkedHashMap<>();

    AskedForm(Form form) {
        this.form = form;
    }

    /** One question, and about what. */
    private record Asked(Question question, String of) {
    }

    /** What is asked. */
    private enum Question {
        HREF {
            @Override
            String ask(Form form, String of) {
                return form.href(of).map(href -> "=" + href).orElse("");
            }
        },
        DRAWN {
            @Override
            String ask(Form form, String of) {
                return form.drawn(of).map(drawn -> "=" + drawn).orElse("");
            }
        },
        COLUMN {
            @Override
            String ask(Form form, String of) {
                return form.column(of).map(column -> "=" + column).orElse("");
            }
        },
        PICTURE {
            @Override
            String ask(Form form, String of) {
                Markup out = new Markup();
                form.picture(out, of, "");
                return out.toString();
            }
        },
        ORNAMENT {
            @Override
            String ask(Form form, String of) {
                Markup out = new Markup();
                form.ornament(out, of);
                return out.toString();
            }
        };

        abstract String ask(Form form, String of);

        boolean isOfFigures() {
            return this == DRAWN || this == PICTURE || this == ORNAMENT;
        }
    }

    /** @param answers what stands for all answers now */
    Told told(String answers) {
        List<String> columns = new ArrayList<>();
        Set<String> figures = new LinkedHashSet<>();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        told.forEach((asked, answer) -> {
            if (asked.question() == Question.COLUMN && !answer.isEmpty()) {
                columns.addAll(List.of(asked.of(), answer.substring(1)));
            } else if (asked.question().isOfFigures()) {
                figures.add(asked.of());
            }
            bytes.write(asked.question().ordinal());
            write(asked.of(), bytes);
            write(answer, bytes);
        });
        return new Told(answers, columns, List.copyOf(figures), bytes.toByteArray());
    }

    private static void write(String text, ByteArrayOutputStream out) {
        byte[] utf8 = text.getBytes(StandardCharsets.UTF_8);
        out.writeBytes(ByteBuffer.allocate(Integer.BYTES).putInt(utf8.length).array());
        out.writeBytes(utf8);
    }

    /** Asks a form all of it again and says whether it answers alike; no further than the first other answer. */
    static boolean holds(Form form, byte[] asked) {
        ByteBuffer in = ByteBuffer.wrap(asked);
        boolean alike = true;
        while (alike && in.hasRemaining()) {
            Question question = Question.values()[in.get()];
            String of = read(in);
            alike = question.ask(form, of).equals(read(in));
        }
        return alike;
    }

    private static String read(ByteBuffer in) {
        byte[] utf8 = new byte[in.getInt()];
        in.get(utf8);
        return new String(utf8, StandardCharsets.UTF_8);
    }

    private void note(Question question, String of) {
        Asked one = new Asked(question, of);
        if (!told.containsKey(one)) {
            told.put(one, question.ask(form, of));
        }
    }

    @Override
    public Optional<String> href(String link) {
        note(Question.HREF, link);
        return form.href(link);
    }

    @Override
    public Optional<String> drawn(String figure) {
        note(Question.DRAWN, figure);
        return form.drawn(figure);
    }

    @Override
    public Optional<String> column(String name) {
        note(Question.COLUMN, name);
        return form.column(name);
    }

    @Override
    public void picture(Markup out, String figure, String alt) {
        note(Question.PICTURE, figure);
        form.picture(out, figure, alt);
    }

    @Override
    public void ornament(Markup out, String figure) {
        note(Question.ORNAMENT, figure);
        form.ornament(out, figure);
    }

    /** The page's own name, which its key holds. */
    @Override
    public String anchor(Leaf page) {
        return form.anchor(page);
    }

    @Override
    public String anchor(Leaf page, String part) {
        return form.anchor(page, part);
    }

    @Override
    public String inLanguage(String language, Leaf page) {
        return form.inLanguage(language, page);
    }

    @Override
    public boolean gated() {
        return form.gated();
    }

    @Override
    public boolean scripted() {
        return form.scripted();
    }

    @Override
    public boolean hasFiles() {
        return form.hasFiles();
    }

    @Override
    public int titleLevel(Leaf page) {
        return form.titleLevel(page);
    }
}
