package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.Section;

/**
 * The planning of one {@link InnerPlan}, with what was asked and filled on the way. A section is set only where the
 * answer to a trial is not known.
 */
final class Planning {
    /** Half lines of the running title where a section goes on. */
    private static final int RUNNING = 3;
    /** Half lines of white above a block, at the most: it is not set at the head of a panel. */
    private static final int MOST_WHITE_AT_HEAD = 4;

    private final List<Section> flow;
    private final List<Frame> frames;
    private final Filler filler;
    private final Trials trials;
    private final Trial.Type type;
    private final List<Optional<String>> names;
    private final Map<Allotment.Group, Room> rooms = new HashMap<>();
    private final Map<Room, Filled> filled = new HashMap<>();
    private final Map<Room, Filling> fillings = new HashMap<>();

    Planning(List<Section> flow, List<Frame> frames, Manuscript manuscript, Stick model, Trials trials) {
        this.flow = flow;
        this.frames = frames;
        this.filler = new Filler(manuscript, model);
        this.trials = trials;
        this.type = new Trial.Type(model.leading(), model.ink(), manuscript.language());
        this.names = flow.stream().map(trials::name).toList();
    }

    /** Where sections are put; panels that are alike are filled once. */
    private record Room(int from, int to, double measure, List<Integer> capacities) {}

    /** What filling comes to. */
    private record Filled(long cost, boolean over) {
        static Filled of(Filling filling) {
            return new Filled(filling.cost(), filling.over() > 0);
        }

        static Filled of(long answer) {
            return new Filled(answer >> 1, (answer & 1) == 1);
        }

        long answer() {
            return cost << 1 | (over ? 1 : 0);
        }
    }

    /** A section that even the least of every block does not bring onto the panels that there are. */
    Optional<String> culprit(String suspect) {
        int spare = frames.size() - flow.size();
        if (spare < 0) {
            return Optional.empty();
        }
        List<Integer> order = new ArrayList<>(IntStream.range(0, flow.size()).boxed().toList());
        order.sort(Comparator.comparing(section -> !flow.get(section).id().equals(suspect)));
        Frame widest = frames.stream().max(Comparator.comparingDouble(Frame::width)).orElseThrow();
        int room = filler.room(widest) - TabSetting.UNITS + MOST_WHITE_AT_HEAD;
        for (int section : order) {
            // each panel more that a section needs is one less for the others
            for (long least = least(section, widest.width()); least > room; least -= room) {
                if (--spare < 0) {
                    return Optional.of(flow.get(section).id());
                }
            }
        }
        return Optional.empty();
    }

    private long least(int section, double measure) {
        Optional<Trial> trial = column(section, measure).map(column -> new Trial.Least(type, column));
        OptionalLong known = trial.map(trials::answer).orElseGet(OptionalLong::empty);
        if (known.isPresent()) {
            return known.getAsLong();
        }
        Filler.Set set = filler.set(flow.get(section), measure);
        long least = set.section().blocks().stream().mapToInt(Choice::least).sum();
        trial.filter(asked -> set.silent()).ifPresent(asked -> trials.learn(asked, least));
        return least;
    }

    private Optional<Trial.Column> column(int section, double measure) {
        return names.get(section).map(name -> new Trial.Column(name, filler.outline(flow.get(section)), measure));
    }

    /** Which sections share which panels, at the least cost. */
    List<Allotment.Group> groups() {
        return Allotment.best(flow.size(), frames.size(), this::cost);
    }

    private long cost(Allotment.Group group) {
        boolean alone = frames.stream().anyMatch(Frame::opens);
        boolean misplaced = alone && beginsEntry(group.from()) && !frames.get(group.panel()).opens();
        return price(group) + (misplaced ? Cost.ON_A_BACK : 0);
    }

    /** Whether a section is the first of its entry: those of one entry have one number on their tabs. */
    private boolean beginsEntry(int section) {
        int tab = flow.get(section).tab();
        return tab > 0 && (section == 0 || flow.get(section - 1).tab() != tab);
    }

    private long price(Allotment.Group group) {
        if (group.panels() > 1 && group.to() == group.from() + 1) {
            // whatever is gained by another panel, going on to it costs this much
            Allotment.Group narrower =
                    new Allotment.Group(group.from(), group.to(), group.panel(), group.panels() - 1);
            long price = price(narrower);
            if (price <= Cost.DIVIDED * (group.panels() - 1)) {
                return price;
            }
        }
        return filled(group).cost() + Cost.SHARED * (group.to() - group.from() - 1);
    }

    /** Id of the first section that does not fit, or not in its place. */
    Optional<String> over(List<Allotment.Group> groups) {
        return Planner.over(groups.stream().map(group -> new Planner.Taken(flow.get(group.from()), frames(group),
                filled(group).over())).toList());
    }

    /** The sections, set, on their panels; by one thread at a time. */
    synchronized List<Spread> spreads(List<Allotment.Group> groups) {
        return groups.stream().map(group -> {
            Room room = room(group);
            return new Spread(sections(room).stream().map(Filler.Set::section).toList(), frames(group),
                    filler.stick(room.measure()), heads(group), room.capacities(), fill(room));
        }).toList();
    }

    private Filled filled(Allotment.Group group) {
        Room room = room(group);
        Filled known = filled.get(room);
        if (known == null) {
            known = ask(room);
            filled.put(room, known);
        }
        return known;
    }

    private Filled ask(Room room) {
        Optional<Trial> trial = trial(room);
        OptionalLong known = trial.map(trials::answer).orElseGet(OptionalLong::empty);
        if (known.isPresent()) {
            return Filled.of(known.getAsLong());
        }
        Filled fresh = Filled.of(fill(room));
        trial.filter(asked -> sections(room).stream().allMatch(Filler.Set::silent))
                .ifPresent(asked -> trials.learn(asked, fresh.answer()));
        return fresh;
    }

    private Optional<Trial> trial(Room room) {
        List<Trial.Column> columns = IntStream.range(room.from(), room.to())
                .mapToObj(section -> column(section, room.measure())).flatMap(Optional::stream).toList();
        return columns.size() < room.to() - room.from() ? Optional.empty()
                : Optional.of(new Trial.Price(type, columns, room.capacities()));
    }

    private Filling fill(Room room) {
        return fillings.computeIfAbsent(room, unfilled -> Filler.fill(sections(room).stream()
                .map(Filler.Set::section).toList(), room.capacities()));
    }

    private List<Filler.Set> sections(Room room) {
        return flow.subList(room.from(), room.to()).stream().map(section -> filler.set(section, room.measure()))
                .toList();
    }

    private List<Frame> frames(Allotment.Group group) {
        return frames.subList(group.panel(), group.panel() + group.panels());
    }

    private Room room(Allotment.Group group) {
        return rooms.computeIfAbsent(group, unseen -> {
            List<Frame> panels = frames(group);
            return new Room(group.from(), group.to(), panels.stream().mapToDouble(Frame::width).min().orElseThrow(),
                    filler.capacities(panels, heads(group)));
        });
    }

    private static List<Integer> heads(Allotment.Group group) {
        boolean alone = group.to() == group.from() + 1;
        return IntStream.range(0, group.panels()).map(panel -> TabSetting.UNITS + (panel > 0 && alone ? RUNNING : 0))
                .boxed().toList();
    }
}
