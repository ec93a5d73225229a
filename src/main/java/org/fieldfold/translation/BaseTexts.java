package org.fieldfold.translation;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Placed;
import org.fieldfold.prose.Prose;

/** Every text of the base that readers see, file by file. */
public final class BaseTexts {
    private BaseTexts() {
    }

    /** By file without its ending, as in {@code pests/onion-thrips}; each in the order of its record. */
    public static SortedMap<String, List<BaseText>> of(ContentBase base) {
        SortedMap<String, List<BaseText>> files = new TreeMap<>();
        Document.of(base).forEach((document, placed) ->
                files.computeIfAbsent(document.file(), first -> new ArrayList<>())
                        .addAll(of(document, placed)));
        return files;
    }

    /** Those of one file; none when the base has no such file. */
    public static List<BaseText> of(ContentBase base, String file) {
        List<BaseText> texts = new ArrayList<>();
        Document.of(base, file).forEach((document, placed) -> texts.addAll(of(document, placed)));
        return texts;
    }

    /** The files that have texts, without reading them. */
    public static SortedSet<String> files(ContentBase base) {
        return Document.files(base);
    }

    private static List<BaseText> of(Document document, Placed<?> placed) {
        List<BaseText> texts = new ArrayList<>();
        new TextWalk(new TextWalk.Change() {
            @Override
            public Prose prose(TextWalk.Place place, Prose was) {
                texts.add(new BaseText(place.path(), was.markdown(), false, false,
                        placed.at((Object[]) place.spanPath().split("/"))));
                return was;
            }

            @Override
            public String line(TextWalk.Place place, String was, boolean optional) {
                texts.add(new BaseText(place.path(), was, true, optional,
                        placed.at((Object[]) place.spanPath().split("/"))));
                return was;
            }
        }).walk(placed.value(), new TextWalk.Place(document.prefix(), ""));
        return texts;
    }
}
