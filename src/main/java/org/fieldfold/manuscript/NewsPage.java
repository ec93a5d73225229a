package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/** Writes the page of what is new this year; there is none where nothing is. */
final class NewsPage {
    private final Register register;
    private final News news;

    NewsPage(Register register, News news) {
        this.register = register;
        this.news = news;
    }

    Optional<Page> page() {
        List<List<Run>> lines = new ArrayList<>();
        for (News.Item item : news.lines(register.base(), register.phrases(), entry -> true)) {
            lines.add(item.entry().isEmpty() ? item.runs() : item.runs().stream().map(run ->
                    run.style() == Run.Style.STRONG ? run.to(Places.to(item.entry())) : run).toList());
        }
        if (lines.isEmpty()) {
            return Optional.empty();
        }
        Span origin = register.base().edition().at("year");
        String name = register.say("news");
        return Optional.of(new Page(Places.NEWS, Page.Kind.REFERENCE, name, Places.START,
                List.of(new Page.Part("top", "", List.of(
                        new Block.Title(List.of(Run.plain(name)),
                                List.of(Run.plain(register.say("news.why"))), origin),
                        new Block.Items(false, lines, origin)))), origin));
    }
}
