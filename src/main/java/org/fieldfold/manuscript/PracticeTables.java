package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fieldfold.entry.BorderSize;
import org.fieldfold.entry.LengthUnit;
import org.fieldfold.entry.NetHole;
import org.fieldfold.entry.PerArea;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Practice;
import org.fieldfold.entry.TunnelSizes;
import org.fieldfold.prose.Run;
import org.fieldfold.scouting.geometry.Field;
import org.fieldfold.scouting.geometry.Hoop;
import org.fieldfold.scouting.geometry.LowTunnel;
import org.fieldfold.scouting.geometry.NetBody;
import org.fieldfold.scouting.geometry.NetChoice;

/** Writes what a practice needs in lengths and pieces: hoops and sheets, nets, borders, traps. */
final class PracticeTables {
    /** A field four times as long as wide, beside the square one of the same area. */
    private static final double LONG = 4;

    private final Register register;
    private final Placed<Practice> placed;

    PracticeTables(Register register, Placed<Practice> placed) {
        this.register = register;
        this.placed = placed;
    }

    List<Block> blocks() {
        Practice practice = placed.value();
        List<Block> blocks = new ArrayList<>();
        practice.tunnel().ifPresent(sizes -> blocks.add(tunnel(sizes)));
        if (!practice.nets().isEmpty()) {
            blocks.addAll(nets(practice.nets()));
        }
        practice.border().ifPresent(border -> blocks.add(border(border)));
        practice.perArea().ifPresent(area -> blocks.add(traps(area)));
        return blocks;
    }

    private Block tunnel(TunnelSizes sizes) {
        In in = new In(register.phrases().measures(), sizes.unit());
        List<List<List<Run>>> rows = new ArrayList<>();
        for (double span : sizes.spans()) {
            for (Hoop hoop : sizes.hoops(span)) {
                LowTunnel tunnel = new LowTunnel(hoop, sizes.bedLength(), sizes.spacing(), sizes.depth(),
                        sizes.allowance());
                rows.add(List.of(strong(in.exact(span)), plain(shape(hoop)), plain(in.exact(hoop.height())),
                        strong(in.enough(tunnel.stock())), plain(String.valueOf(tunnel.hoops())),
                        strong(in.enough(tunnel.sheetWidth())), plain(in.enough(tunnel.sheetLength()))));
            }
        }
        return new Block.Grid(register.say("sizes.tunnel", in.exact(sizes.bedLength()),
                in.exact(sizes.spacing()), in.exact(sizes.depth()), in.exact(sizes.allowance())),
                heads("sizes.bed", "sizes.shape", "sizes.height", "sizes.hoop", "sizes.hoops",
                        "sizes.sheet-width", "sizes.sheet-length"), rows, placed.at("tunnel"));
    }

    private String shape(Hoop hoop) {
        return register.say(hoop instanceof Hoop.Semicircle ? "sizes.semicircle"
                : hoop instanceof Hoop.Legged ? "sizes.legged" : "sizes.flat");
    }

    /** This net stops these, not those. */
    private List<Block> nets(List<NetHole> nets) {
        List<NetBody> bodies = register.base().pests().values().stream().map(Placed::value)
                .filter(pest -> PracticePage.isUsedAgainst(pest, placed.value().id()) || nets.stream()
                        .anyMatch(net -> net.stops().contains(pest.id())))
                .map(PestEntry::netBody).flatMap(Optional::stream).toList();
        List<List<List<Run>>> rows = new ArrayList<>();
        for (NetHole net : nets) {
            NetChoice choice = NetChoice.of(net.hole(), bodies);
            rows.add(List.of(strong(net.name()), plain(register.phrases().measures().hole(net.hole())),
                    register.links(choice.stops()), register.links(choice.letsThrough())));
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Grid(register.say("nets.caption"), heads("nets.net", "nets.holes", "nets.stops",
                "nets.lets-through"), rows, placed.at("nets")));
        OptionalDouble coarsest = NetChoice.coarsest(bodies);
        coarsest.ifPresent(hole -> blocks.add(new Block.Paragraph(List.of(Run.plain(
                register.say("nets.coarsest", register.phrases().measures().largestHole(hole)))), List.of(),
                placed.at("nets"))));
        return blocks;
    }

    private Block border(BorderSize border) {
        In in = new In(register.phrases().measures(), border.unit());
        List<List<List<Run>>> rows = new ArrayList<>();
        for (double side : border.fields()) {
            for (double stretch : new double[] {1, LONG}) {
                Field field = new Field(side / StrictMath.sqrt(stretch), side * StrictMath.sqrt(stretch));
                rows.add(List.of(strong(register.say("border.by", in.exact(field.width()),
                        in.exact(field.length()))),
                        strong(in.enough(field.borderFor(border.share() / 100)))));
            }
        }
        return new Block.Grid(register.say("border.caption", Figures.plain(border.share())),
                heads("border.field", "border.width"), rows, placed.at("border"));
    }

    private Block traps(PerArea area) {
        return new FieldPages(register).perArea(area, register.say("area.traps"), placed.at("per-area"));
    }

    private List<List<Run>> heads(String... keys) {
        List<List<Run>> heads = new ArrayList<>();
        for (String key : keys) {
            heads.add(strong(register.say(key)));
        }
        return heads;
    }

    private static List<Run> plain(String words) {
        return List.of(Run.plain(words));
    }

    private static List<Run> strong(String words) {
        return List.of(Run.strong(words));
    }

    private record In(Measures measures, LengthUnit unit) {
        String exact(double length) {
            return measures.length(length, unit);
        }

        String enough(double length) {
            return measures.enough(length, unit);
        }
    }
}
