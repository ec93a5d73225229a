package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.trace.KeptResults;
import org.fieldfold.trace.ResultReader;
import org.fieldfold.trace.ResultWriter;

/**
 * What is known of pages, or of a file, that are made together.
 *
 * @param file its name and its hash, where there is one
 */
record KnownUnit(List<KnownPage> pages, Optional<KnownFile> file) {
    /** @param page as long as it is at hand */
    record KnownPage(Page.Head head, Optional<String> hash, Optional<Page> page) {
    }

    record KnownFile(String name, Optional<String> hash) {
    }

    static KnownUnit of(List<KnownPage> pages) {
        return new KnownUnit(pages, Optional.empty());
    }

    static KnownUnit of(Optional<KnownFile> file) {
        return new KnownUnit(List.of(), file);
    }

    /** As it is written down: without the pages themselves. */
    record Form() implements KeptResults.Form<KnownUnit> {
        @Override
        public void write(KnownUnit unit, ResultWriter out) {
            out.number(unit.pages().size());
            for (KnownPage page : unit.pages()) {
                out.text(page.head().id());
                out.number(page.head().kind().ordinal());
                out.text(page.head().name());
                out.text(page.head().up());
                out.number(page.head().parts().size());
                page.head().parts().forEach(out::text);
                perhaps(page.hash(), out);
            }
            out.number(unit.file().isPresent() ? 1 : 0);
            unit.file().ifPresent(file -> {
                out.text(file.name());
                perhaps(file.hash(), out);
            });
        }

        @Override
        public Optional<KnownUnit> read(ResultReader in) {
            List<KnownPage> pages = new ArrayList<>();
            for (int left = in.count(); left > 0; left--) {
                String id = in.text();
                Page.Kind kind = kind(in.number());
                String name = in.text();
                String up = in.text();
                List<String> parts = new ArrayList<>();
                for (int more = in.count(); more > 0; more--) {
                    parts.add(in.text());
                }
                pages.add(new KnownPage(new Page.Head(id, kind, name, up, parts), perhaps(in), Optional.empty()));
            }
            return Optional.of(new KnownUnit(pages, in.number() == 1
                    ? Optional.of(new KnownFile(in.text(), perhaps(in))) : Optional.empty()));
        }

        private static Page.Kind kind(int number) {
            if (number < 0 || number >= Page.Kind.values().length) {
                throw new IllegalArgumentException("expected a kind of page, found " + number);
            }
            return Page.Kind.values()[number];
        }

        private static void perhaps(Optional<String> text, ResultWriter out) {
            out.number(text.isPresent() ? 1 : 0);
            text.ifPresent(out::text);
        }

        private static Optional<String> perhaps(ResultReader in) {
            return in.number() == 1 ? Optional.of(in.text()) : Optional.empty();
        }
    }
}
