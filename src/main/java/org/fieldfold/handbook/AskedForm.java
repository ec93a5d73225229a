package org.fieldfold.handbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.manuscript.Page;

/**
 * A form that notes whatever a page asks of it, with the answers: addresses, drawings, columns, all that depends on
 * other pages. Asked the same again, and answering alike, it would be given the same page.
 */
final class AskedForm implements Form {
    private final Form form;
    private final List<Asked> asked = new ArrayList<>();

    AskedForm(Form form) {
        this.form = form;
    }

    /** One question, about what, and its answer. */
    record Asked(Question question, String of, String told) {
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
    }

    /** All that was asked, in order. */
    List<Asked> asked() {
        return List.copyOf(asked);
    }

    /**
     * Asks a form all of it again and says whether it answers alike. It asks no further than the first other
     * answer: so it asks nothing that the page, written anew, would not, and a form that remembers what it was
     * asked for knows no more than after a page that was written.
     */
    static boolean holds(Form form, List<Asked> asked) {
        return asked.stream().allMatch(one -> one.question().ask(form, one.of()).equals(one.told()));
    }

    private void note(Question question, String of) {
        asked.add(new Asked(question, of, question.ask(form, of)));
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
    public String anchor(Page page) {
        return form.anchor(page);
    }

    @Override
    public String anchor(Page page, String part) {
        return form.anchor(page, part);
    }

    @Override
    public String inLanguage(String language, Page page) {
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
    public int titleLevel(Page page) {
        return form.titleLevel(page);
    }
}
