package org.fieldfold.manuscript;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/**
 * One thing on a panel or a page. Blocks stand in reading order; none of them knows where it will be placed.
 * Each carries the place that its words came from, so that what does not fit can be said there.
 */
public sealed interface Block {
    /** Where its words were written. */
    Span origin();

    /** The name of a section: a pest, or the title on the cover. Level 1 heading of its section. */
    record Title(List<Run> name, List<Run> beneath, Span origin) implements Block {
        public Title {
            name = List.copyOf(name);
            beneath = List.copyOf(beneath);
        }
    }

    /** A heading inside a section; level 2 is the first below the title. */
    record Heading(int level, List<Run> runs, Span origin) implements Block {
        public Heading {
            runs = List.copyOf(runs);
        }
    }

    /**
     * A paragraph, often with a strong lead-in ('Look for'). {@code brief} is what may be set instead where
     * room is short; empty when there is no shorter form.
     */
    record Paragraph(List<Run> runs, List<Run> brief, Span origin) implements Block {
        public Paragraph {
            runs = List.copyOf(runs);
            brief = List.copyOf(brief);
        }
    }

    /**
     * A list; an item that is dropped first where room is short stands last.
     *
     * @param needed how many items, from the first, are never left out
     */
    record Items(boolean numbered, List<List<Run>> items, int needed, Span origin) implements Block {
        public Items {
            items = items.stream().map(List::copyOf).toList();
            if (needed < 0 || needed > items.size()) {
                throw new IllegalArgumentException("needed " + needed + " of " + items.size() + " items");
            }
        }

        /** A list of which nothing is left out. */
        public Items(boolean numbered, List<List<Run>> items, Span origin) {
            this(numbered, items, items.size(), origin);
        }
    }

    /** Drawings side by side, each with its true-size bar. */
    record Plates(List<Plate> plates, Span origin) implements Block {
        public Plates {
            plates = List.copyOf(plates);
        }
    }

    /**
     * One drawing.
     *
     * @param figure id of the figure
     * @param caption printed beneath, as in {@code adult}
     * @param trueSize body length in mm, drawn as a bar of that length; empty for damage
     */
    record Plate(String figure, String caption, String alt, Optional<Length> trueSize) {
        /** From the smallest to the largest, in mm. */
        public record Length(double from, double to) {}
    }

    /**
     * The count card: what to look at on the left, the number to act at in large figures on the right, and a
     * box to pencil a tally in for each stop.
     *
     * @param look what to look at and how
     * @param above the words above the number, as in {@code act at}
     * @param number the number, or a short word where there is none to count
     * @param below the words below it, as in {@code adults}
     * @param stops number of boxes; 0 for none
     * @param counted entry and threshold, as in {@code leek-moth/leaves}, so that one can count on the card;
     *     empty where nothing is counted
     */
    record CountBox(List<Run> look, String above, String number, String below, int stops, String counted,
            Span origin) implements Block {
        public CountBox {
            look = List.copyOf(look);
        }

        /** A box of the same shape that nobody counts on. */
        public CountBox(List<Run> look, String above, String number, String below, int stops, Span origin) {
            this(look, above, number, below, stops, "", origin);
        }
    }

    /**
     * A count card for the wall, to be read from some way off. Only the poster has it.
     *
     * @param look what to look at, how, and the other counts
     * @param number to act at; empty where no count decides
     */
    record WallCard(String name, Optional<Plate> plate, List<Run> look, String above, String number,
            String below, Span origin) implements Block {
        public WallCard {
            look = List.copyOf(look);
        }
    }

    /**
     * One tier of control, with as many notches at its edge as its number says.
     *
     * @param after a sentence behind the measures, such as the caution that tier 3 never goes without
     */
    record Tier(int tier, List<Run> heading, List<Measure> measures, List<Run> after, Span origin)
            implements Block {
        public Tier {
            if (tier < 1 || tier > 3) {
                throw new IllegalArgumentException("tier " + tier + "; there are 1, 2 and 3");
            }
            if (tier == 3 && after.isEmpty()) {
                throw new IllegalArgumentException("tier 3 without its caution at " + origin.place());
            }
            measures = List.copyOf(measures);
            after = List.copyOf(after);
        }
    }

    /**
     * One measure of a tier.
     *
     * @param facts what one compares between materials, such as the group; empty where the runs say all
     */
    record Measure(List<Run> runs, List<Fact> facts, Span origin) {
        public Measure {
            runs = List.copyOf(runs);
            facts = List.copyOf(facts);
        }

        /** A measure that its words say whole. */
        public Measure(List<Run> runs, Span origin) {
            this(runs, List.of(), origin);
        }
    }

    /** A name and what belongs to it, as in {@code group: 5}. */
    record Fact(String name, List<Run> runs) {
        public Fact {
            runs = List.copyOf(runs);
        }

        public static Fact of(String name, String words) {
            return new Fact(name, List.of(Run.plain(words)));
        }
    }

    /**
     * A table with a header row; rows are as long as the header.
     *
     * @param brief rows that may stand instead where room is short; empty when there is no shorter form
     * @param spare whether it is left out where there is no room at all: the words before it say enough
     */
    record Grid(String caption, List<List<Run>> header, List<List<List<Run>>> rows,
            List<List<List<Run>>> brief, boolean spare, Span origin) implements Block {
        public Grid {
            for (List<List<Run>> row : rows) {
                if (row.size() != header.size()) {
                    throw new IllegalArgumentException("a row of " + row.size() + " under " + header.size()
                            + " columns in " + caption);
                }
            }
        }

        /** A table that always stands whole. */
        public Grid(String caption, List<List<Run>> header, List<List<List<Run>>> rows, Span origin) {
            this(caption, header, rows, List.of(), false, origin);
        }
    }

    /**
     * A strip calendar: a row an entry, windows in which to look in outline, what is expected in solid bars
     * with a tick at its usual day.
     *
     * @param months initials of the months that it shows, in order
     * @param firstMonth number of the first of them, 1 to 12
     * @param note from where and which years it is, and that it is an estimate
     * @param spare whether it may be left out where it would cost size
     */
    record Weeks(String title, List<String> months, int firstMonth, List<WeekRow> rows, List<Run> note,
            boolean spare, Span origin) implements Block {
        public Weeks {
            months = List.copyOf(months);
            rows = List.copyOf(rows);
            note = List.copyOf(note);
            if (months.isEmpty() || firstMonth < 1 || firstMonth + months.size() > 13) {
                throw new IllegalArgumentException(months.size() + " months from " + firstMonth);
            }
        }
    }

    /**
     * One entry's row.
     *
     * @param link the page of the entry, as in {@code #leek-moth}; empty where there is none
     * @param looks windows, in outline
     * @param bars what is expected, solid
     * @param named what the bars are, with the usual day of each; empty without bars
     * @param words all that is drawn, in words
     * @param brief the same in a few words, for where there is no room to draw
     */
    record WeekRow(String name, String link, List<Stretch> looks, List<Stretch> bars, String named, String words,
            String brief) {
        public WeekRow {
            looks = List.copyOf(looks);
            bars = List.copyOf(bars);
        }
    }

    /** Days of a year from first to last, which is not before the first, with the usual one between them. */
    record Stretch(MonthDay first, Optional<MonthDay> usual, MonthDay last) {
    }

    /** Files beside the page. Only the handbook as a folder has them. */
    record Downloads(List<Download> files, Span origin) implements Block {
        public Downloads {
            files = List.copyOf(files);
        }
    }

    /** One file, by its name in the folder. */
    record Download(String file, String label) {
    }

    /** A square code that a telephone reads, with its address in words. */
    record Code(String address, List<Run> caption, Span origin) implements Block {
        public Code {
            caption = List.copyOf(caption);
        }
    }

    /** Words in a ruled box, such as the notice that this is a demonstration. */
    record Notice(List<Run> runs, Span origin) implements Block {
        public Notice {
            runs = List.copyOf(runs);
        }
    }

    /** An office's own words, signed, in a box of a shape that nothing of the base has. */
    record LocalNote(List<Run> runs, Span origin) implements Block {
        public LocalNote {
            runs = List.copyOf(runs);
        }
    }

    /** A line across the panel. */
    record Divider(Span origin) implements Block {}

    /** Facts beneath each other. Only the handbook has them. */
    record Facts(List<Fact> facts, Span origin) implements Block {
        public Facts {
            facts = List.copyOf(facts);
        }
    }

    /** Line drawings that are worked out, such as the way through a field. Only the handbook has them. */
    record Diagrams(List<Diagram> diagrams, Span origin) implements Block {
        public Diagrams {
            diagrams = List.copyOf(diagrams);
        }
    }

    /**
     * One drawing inside a frame.
     *
     * @param lines the way, one list of corners a stretch
     * @param dots the stops, in order
     */
    record Diagram(String caption, String alt, double width, double height, List<List<Spot>> lines,
            List<Spot> dots) {
        public Diagram {
            lines = lines.stream().map(List::copyOf).toList();
            dots = List.copyOf(dots);
        }
    }

    /** A place in a drawing, from its upper left. */
    record Spot(double x, double y) {
    }

    /** Ways on, each with a drawing where there is one. Only the handbook has them. */
    record Tiles(List<Tile> tiles, Span origin) implements Block {
        public Tiles {
            tiles = List.copyOf(tiles);
        }
    }

    /**
     * One way on.
     *
     * @param link the page it leads to, as in {@code #leek-moth}
     * @param figure id of its drawing
     * @param beneath a few words below the name
     */
    record Tile(String link, Optional<String> figure, String name, List<Run> beneath) {
        public Tile {
            beneath = List.copyOf(beneath);
        }
    }

    /** Two animals that are taken for each other, side by side. Only the handbook has it. */
    record SideBySide(Side one, Side other, List<Run> mark, Span origin) implements Block {
        public SideBySide {
            mark = List.copyOf(mark);
        }
    }

    /**
     * One of the two.
     *
     * @param label what it is to the reader, as in {@code a friend: leave it}
     * @param link the page it leads to; empty for the page it stands on
     */
    record Side(String label, String name, String link, Optional<Plate> plate) {
    }
}
