package org.fieldfold.content;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fieldfold.entry.ActiveIngredient;
import org.fieldfold.entry.Crop;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.FigureNote;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.NaturalEnemy;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Practice;
import org.fieldfold.entry.Price;
import org.fieldfold.entry.Source;

/** The kinds of file in a content base, by where they lie and how their names end. */
enum FileKind {
    EDITION("", "edition.yaml", Limit.TEXT, Edition.class),
    CROPS("", "crops.yaml", Limit.TEXT, Crop.class),
    ACTIVE_INGREDIENTS("", "active-ingredients.yaml", Limit.TEXT, ActiveIngredient.class),
    SOURCES("", "sources.yaml", Limit.TEXT, Source.class),
    PRICES("", "prices.yaml", Limit.TEXT, Price.class),
    PEST("pests", ".yaml", Limit.TEXT, PestEntry.class),
    NATURAL_ENEMY("natural-enemies", ".yaml", Limit.TEXT, NaturalEnemy.class),
    PRACTICE("practices", ".yaml", Limit.TEXT, Practice.class),
    GUIDE("guides", ".yaml", Limit.TEXT, Guide.class),
    OFFICE("offices", ".yaml", Limit.TEXT, Office.class),
    FIGURE("figures", ".yaml", Limit.TEXT, FigureNote.class),
    DRAWING("figures", ".svg", Limit.LARGE, Object.class),
    PHOTOGRAPH("figures", ".jpg", Limit.LARGE, Object.class),
    RASTER("figures", ".png", Limit.LARGE, Object.class),
    CHAPTER("chapters", ".md", Limit.TEXT, Object.class),
    SCHEME("schemes", ".fold", Limit.TEXT, Object.class),
    WEATHER("weather", ".csv", Limit.LARGE, Object.class),
    LEDGER("issued", ".json", Limit.LARGE, Object.class),
    /** Texts in another language, in a folder that is named by it and mirrors this one. */
    TRANSLATION(FileKind.LANGUAGE, ".yaml", Limit.TEXT, Object.class);

    /** Stands for the folder of any language. */
    private static final String LANGUAGE = "<language>";

    /** Sizes in bytes beyond which a file is not read. */
    enum Limit {
        TEXT(1), LARGE(5);

        private final int mebibytes;

        Limit(int mebibytes) {
            this.mebibytes = mebibytes;
        }

        int bytes() {
            return mebibytes << 20;
        }

        int mebibytes() {
            return mebibytes;
        }
    }

    private final String folder;
    private final String ending;
    private final Limit limit;
    private final Class<?> type;

    FileKind(String folder, String ending, Limit limit, Class<?> type) {
        this.folder = folder;
        this.ending = ending;
        this.limit = limit;
        this.type = type;
    }

    /** The kind of a file in a folder of the content base, {@code ""} for the base itself. */
    static Optional<FileKind> of(String folder, String name) {
        return Arrays.stream(values()).filter(kind -> kind.folder.equals(folder)
                && (folder.isEmpty() ? name.equals(kind.ending) : name.endsWith(kind.ending))).findFirst();
    }

    /** The endings that are read in a folder, or the names in the base itself. */
    static List<String> endings(String folder) {
        return Arrays.stream(values()).filter(kind -> kind.folder.equals(folder)).map(kind -> kind.ending)
                .toList();
    }

    static List<String> folders() {
        return Arrays.stream(values()).map(kind -> kind.folder)
                .filter(folder -> !folder.isEmpty() && !folder.equals(LANGUAGE)).distinct().toList();
    }

    /** The name of its schema. */
    String schema() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    Limit limit() {
        return limit;
    }

    /** The folder it lies in; empty for the base itself. */
    String folder() {
        return folder;
    }

    /** The record that one item of it becomes. */
    Class<?> type() {
        return type;
    }

    boolean isYaml() {
        return type != Object.class;
    }

    boolean isImage() {
        return this == DRAWING || this == PHOTOGRAPH || this == RASTER;
    }

    /** The key under which a file of many records keeps its list; empty for a file of one record. */
    Optional<String> listKey() {
        return this == CROPS || this == ACTIVE_INGREDIENTS || this == SOURCES || this == PRICES
                ? Optional.of(schema()) : Optional.empty();
    }

    /** The id that a file's name gives. */
    String id(String name) {
        return folder.isEmpty() ? schema() : name.substring(0, name.length() - ending.length());
    }

    /** The shape of one record of it. */
    Shape.Fields shape() {
        return Shapes.fields(type, listKey().isEmpty());
    }
}
