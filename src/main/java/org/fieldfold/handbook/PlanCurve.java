package org.fieldfold.handbook;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.fieldfold.scouting.sequential.Outcome;
import org.fieldfold.scouting.sequential.SequentialPlan;
import org.fieldfold.scouting.sequential.StopTable;

/** What a plan does over densities: the operating characteristic and the average sample number. */
record PlanCurve(List<Point> points) {
    /** Steps of the drawn line; every fourth stands in the table. */
    private static final int STEPS = 32;
    private static final int TABLED = 4;
    private static final double WIDTH = 160;
    private static final double HEIGHT = 60;

    /** One density, as a share or a mean. */
    record Point(double density, Outcome outcome) {
    }

    PlanCurve {
        points = List.copyOf(points);
    }

    /** From half the lower density to one and a half of the upper one. */
    static PlanCurve of(SequentialPlan plan) {
        StopTable table = plan.draft();
        double from = plan.low() / 2;
        double to = plan.high() < 0.6 || plan.high() > 1 ? plan.high() * 1.5 : (plan.high() + 1) / 2;
        List<Point> points = new ArrayList<>();
        for (int step = 0; step <= STEPS; step++) {
            double density = from + (to - from) * step / STEPS;
            points.add(new Point(density, table.in(density)));
        }
        return new PlanCurve(points);
    }

    List<Point> tabled() {
        List<Point> tabled = new ArrayList<>();
        for (int i = 0; i < points.size(); i += TABLED) {
            tabled.add(points.get(i));
        }
        return tabled;
    }

    /** Units looked at where the plan has most trouble. */
    double mostLooked() {
        return points.stream().mapToDouble(point -> point.outcome().unitsLookedAt()).max().orElse(0);
    }

    /** The chance of acting as a line from left, low density, to right. */
    void draw(Markup out, String alt) {
        out.open("svg", "class", "diagram", "role", "img", "aria-label", alt, "viewBox",
                "-1 -1 " + NumbersPage.number(WIDTH + 2, 0) + " " + NumbersPage.number(HEIGHT + 2, 0));
        out.empty("rect", "width", NumbersPage.number(WIDTH, 0), "height", NumbersPage.number(HEIGHT, 0));
        List<String> corners = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            corners.add(NumbersPage.number(WIDTH * i / (points.size() - 1), 1) + ","
                    + NumbersPage.number(HEIGHT * (1 - points.get(i).outcome().chanceOfActing()), 1));
        }
        out.empty("polyline", "points", corners.stream().collect(Collectors.joining(" "))).close();
    }
}
