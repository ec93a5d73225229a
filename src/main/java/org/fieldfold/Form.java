package org.fieldfold;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.pdf.PrintJob;
import org.fieldfold.report.FitRow;
import org.fieldfold.source.Finding;

/** One form of a guide on a paper. It is set when that is needed, and then only once. */
final class Form {
    private final String path;
    private final String paper;
    private final SheetOrder order;
    private final PrintRoom room;
    private final Supplier<Setting.Set> setting;
    private final Look look;
    private final List<Finding> leftOut;
    private Optional<Setting.Set> set;

    /**
     * @param path in the build
     * @param paper as the fit report names it, but for the number of sheets
     * @param setting sets it
     */
    Form(String path, String paper, SheetOrder order, PrintRoom room, Supplier<Setting.Set> setting) {
        this.path = path;
        this.paper = paper;
        this.order = order;
        this.room = room;
        this.setting = setting;
        this.leftOut = List.of();
        this.set = Optional.empty();
        this.look = room.look(order, this::set);
    }

    private Form(Form other, List<Finding> leftOut) {
        this.path = other.path;
        this.paper = other.paper;
        this.order = other.order;
        this.room = other.room;
        this.setting = other.setting;
        this.look = other.look;
        this.leftOut = leftOut;
        this.set = other.set;
    }

    /** The same, with what is to be said about another form that is not printed. */
    Form without(Finding leftOut) {
        return new Form(this, List.of(leftOut));
    }

    private synchronized Setting.Set set() {
        if (set.isEmpty()) {
            set = Optional.of(setting.get());
        }
        return set.get();
    }

    /** Keeps what was found out, and not what was set: that would grow with the offices. */
    synchronized Form released() {
        set = Optional.empty();
        return this;
    }

    String path() {
        return path;
    }

    Manuscript manuscript() {
        return order.setting().manuscript();
    }

    PrintJob job() {
        return order.job(set());
    }

    List<Finding> findings() {
        return Stream.concat(look.findings().stream(), leftOut.stream()).toList();
    }

    List<FitRow> fit(FitRows rows) {
        return rows.of(manuscript().id(), paper(), look.fit());
    }

    /** As the fit report names it. */
    String paper() {
        return order.setting().manner() instanceof Setting.Manner.Pages
                ? paper + ", " + look.sheets() + (look.sheets() == 1 ? " sheet" : " sheets") : paper;
    }

    /** @param read the base that it was written of */
    PrintedSheet sheet(ContentBase read, List<FitRow> fit) {
        return new PrintedSheet(room.facts(path, order, look, read, fit, findings()), () -> {
            PrintJob job = job();
            released();
            return job;
        });
    }
}
