package org.fieldfold.scouting.geometry;

import java.util.ArrayList;
import java.util.List;
import org.fieldfold.scouting.Expect;
import org.fieldfold.scouting.Walk;

/**
 * A walk drawn over a field: its way and its stops, in the field's unit, from the corner at which one enters.
 *
 * @param legs the way, one list of corners a stretch that is walked without a break
 * @param stops in the order of walking
 */
public record FieldWalk(List<List<Point>> legs, List<Point> stops) {
    /** Across is along the field's width, along is along its length. */
    public record Point(double across, double along) {
        Point towards(Point other, double share) {
            return new Point(across + share * (other.across - across), along + share * (other.along - along));
        }

        double distance(Point other) {
            return StrictMath.hypot(other.across - across, other.along - along);
        }
    }

    public FieldWalk {
        legs = legs.stream().map(List::copyOf).toList();
        stops = List.copyOf(stops);
    }

    /**
     * Stops lie evenly along each stretch, the first and the last half a step from its ends.
     *
     * @param margin kept from the field's edge, so that the edge does not stand for the whole field; below
     *     half the shorter side. {@link Walk#EDGE} runs along that margin
     * @param stops at least 1
     */
    public static FieldWalk of(Walk walk, Field field, double margin, int stops) {
        Expect.atLeast(1, stops, "stops");
        double shorter = Math.min(field.width(), field.length());
        Expect.within(0, shorter / 2 - shorter * 1e-9, margin,
                "margin of the walk, below half the shorter side,");
        Frame frame = new Frame(margin, margin, field.width() - margin, field.length() - margin);
        List<List<Point>> legs = switch (walk) {
            case V -> List.of(frame.zigzag(2));
            case W -> List.of(frame.zigzag(4));
            case X -> List.of(List.of(frame.at(0, 0), frame.at(1, 1)),
                    List.of(frame.at(1, 0), frame.at(0, 1)));
            case EDGE -> List.of(List.of(frame.at(0, 0), frame.at(0, 1), frame.at(1, 1), frame.at(1, 0),
                    frame.at(0, 0)));
            case ROWS, TRAPS -> List.of(frame.upAndDown(rows(field, stops)));
            case BED -> List.of(List.of(frame.at(0.5, 0), frame.at(0.5, 1)));
        };
        return new FieldWalk(legs, evenly(legs, stops));
    }

    /** Rows to walk so that stops lie about as far apart across the field as along it. */
    private static int rows(Field field, int stops) {
        double rows = Math.sqrt(stops * field.width() / field.length());
        return (int) Math.max(1, Math.min(stops, Math.rint(rows)));
    }

    /** The rectangle within the margin. */
    private record Frame(double left, double near, double right, double far) {
        Point at(double across, double along) {
            return new Point(left + across * (right - left), near + along * (far - near));
        }

        List<Point> zigzag(int strokes) {
            List<Point> corners = new ArrayList<>();
            for (int corner = 0; corner <= strokes; corner++) {
                corners.add(at((double) corner / strokes, corner % 2));
            }
            return corners;
        }

        List<Point> upAndDown(int rows) {
            List<Point> corners = new ArrayList<>();
            for (int row = 0; row < rows; row++) {
                double across = (row + 0.5) / rows;
                corners.add(at(across, row % 2));
                corners.add(at(across, 1 - row % 2));
            }
            return corners;
        }
    }

    private static List<Point> evenly(List<List<Point>> legs, int stops) {
        List<Point> points = new ArrayList<>();
        int first = legs.size() == 1 ? stops : onFirstDiagonal(stops);
        points.addAll(spaced(legs.get(0), first));
        if (first < stops) {
            points.addAll(spaced(legs.get(1), stops - first));
        }
        return points;
    }

    /** Half of the stops, but an odd number only on one diagonal, or two stops would meet in the middle. */
    private static int onFirstDiagonal(int stops) {
        return stops % 4 == 2 ? stops / 2 + 1 : (stops + 1) / 2;
    }

    private static List<Point> spaced(List<Point> leg, int stops) {
        double whole = length(leg);
        List<Point> points = new ArrayList<>();
        for (int stop = 0; stop < stops; stop++) {
            points.add(along(leg, whole * (stop + 0.5) / stops));
        }
        return points;
    }

    private static double length(List<Point> leg) {
        double length = 0;
        for (int i = 1; i < leg.size(); i++) {
            length += leg.get(i - 1).distance(leg.get(i));
        }
        return length;
    }

    private static Point along(List<Point> leg, double distance) {
        double left = distance;
        for (int i = 1; i < leg.size(); i++) {
            double stretch = leg.get(i - 1).distance(leg.get(i));
            if (left <= stretch) {
                return leg.get(i - 1).towards(leg.get(i), stretch > 0 ? left / stretch : 0);
            }
            left -= stretch;
        }
        return leg.get(leg.size() - 1);
    }
}
