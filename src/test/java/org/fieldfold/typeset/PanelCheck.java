package org.fieldfold.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What holds for every set panel: nothing outside the live area, nothing over anything else, black on white.
 */
final class PanelCheck {
    private static final double SLACK = 0.01;

    private final TypeMetrics type;
    private final Frame frame;
    private final SetPanel panel;

    private PanelCheck(TypeMetrics type, Frame frame, SetPanel panel) {
        this.type = type;
        this.frame = frame;
        this.panel = panel;
    }

    static void check(TypeMetrics type, List<Frame> frames, SetGuide guide) {
        assertEquals(frames.stream().map(Frame::reading).toList(),
                guide.panels().stream().map(SetPanel::reading).toList());
        for (int i = 0; i < frames.size(); i++) {
            PanelCheck check = new PanelCheck(type, frames.get(i), guide.panels().get(i));
            check.insideLiveArea();
            check.nothingOverlaps();
            check.inksContrast();
            check.noRuleCrossesWords();
        }
    }

    private void insideLiveArea() {
        Rectangle2D live = new Rectangle2D.Double(frame.left() - SLACK, frame.top() - SLACK,
                frame.width() + 2 * SLACK, frame.height() + 2 * SLACK);
        for (Mark mark : panel.marks()) {
            if (mark instanceof Mark.Words words && words.text().isBlank()) {
                continue; // a space at the end of a line, kept for reading aloud, has no ink
            }
            bounds(mark).ifPresent(box -> assertTrue(live.contains(box), "panel " + panel.reading() + " live "
                    + frame + " mark " + mark));
        }
    }

    private void nothingOverlaps() {
        List<Mark> solid = panel.marks().stream().filter(mark -> mark instanceof Mark.Words
                || mark instanceof Mark.Drawing || mark instanceof Mark.SquareCode
                || mark instanceof Mark.Bars).toList();
        for (int i = 0; i < solid.size(); i++) {
            for (int j = i + 1; j < solid.size(); j++) {
                Rectangle2D shared = bounds(solid.get(i)).orElseThrow()
                        .createIntersection(bounds(solid.get(j)).orElseThrow());
                assertFalse(shared.getWidth() > SLACK && shared.getHeight() > SLACK,
                        "panel " + panel.reading() + ": " + solid.get(i) + " over " + solid.get(j));
            }
        }
    }

    private void inksContrast() {
        List<Rectangle2D> fills = new ArrayList<>();
        for (Mark mark : panel.marks()) {
            if (mark instanceof Mark.Box box && box.fill().isPresent()) {
                fills.add(new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height()));
            } else if (mark instanceof Mark.Shape) {
                fills.add(bounds(mark).orElseThrow());
            } else if (mark instanceof Mark.Words words) {
                Rectangle2D box = bounds(words).orElseThrow();
                if (words.ink().equals(Mark.Ink.WHITE)) {
                    assertTrue(fills.stream().anyMatch(fill -> fill.contains(box)), "white on white: "
                            + words);
                } else {
                    assertTrue(fills.stream().noneMatch(fill -> fill.intersects(box)), "ink on ink: "
                            + words);
                }
            }
        }
    }

    private void noRuleCrossesWords() {
        for (Mark mark : panel.marks()) {
            if (mark instanceof Mark.Stroke stroke) {
                Rectangle2D rule = new Rectangle2D.Double(Math.min(stroke.x1(), stroke.x2()),
                        Math.min(stroke.y1(), stroke.y2()), Math.abs(stroke.x2() - stroke.x1()) + 0.001,
                        Math.abs(stroke.y2() - stroke.y1()) + 0.001);
                for (Mark other : panel.marks()) {
                    if (other instanceof Mark.Words words) {
                        // from the foot to the height of small letters
                        Rectangle2D letters = new Rectangle2D.Double(words.x(),
                                words.baseline() - 0.5 * words.size(), width(words), 0.5 * words.size());
                        assertFalse(letters.intersects(rule), "panel " + panel.reading() + ": " + stroke
                                + " through " + words);
                    }
                }
            }
        }
    }

    private double width(Mark.Words words) {
        return type.width(words.face(), words.text().stripTrailing()) * words.size() / 1000;
    }

    private Optional<Rectangle2D> bounds(Mark mark) {
        if (mark instanceof Mark.Words words) {
            return Optional.of(new Rectangle2D.Double(words.x(), words.baseline() - 0.72 * words.size(),
                    width(words), 0.92 * words.size()));
        } else if (mark instanceof Mark.Box box) {
            double out = box.outline().isPresent() ? box.lineWidth() / 2 : 0;
            return Optional.of(new Rectangle2D.Double(box.x() - out, box.y() - out, box.width() + 2 * out,
                    box.height() + 2 * out));
        } else if (mark instanceof Mark.Stroke stroke) {
            return Optional.of(new Rectangle2D.Double(Math.min(stroke.x1(), stroke.x2()),
                    Math.min(stroke.y1(), stroke.y2()), Math.abs(stroke.x2() - stroke.x1()) + 1e-4,
                    Math.abs(stroke.y2() - stroke.y1()) + 1e-4));
        } else if (mark instanceof Mark.Drawing drawing) {
            return Optional.of(new Rectangle2D.Double(drawing.x(), drawing.y(), drawing.width(),
                    drawing.height()));
        } else if (mark instanceof Mark.SquareCode code) {
            return Optional.of(new Rectangle2D.Double(code.x(), code.y(), code.size(), code.size()));
        } else if (mark instanceof Mark.Bars bars) {
            Rectangle2D box = new Rectangle2D.Double(bars.x(), bars.y(), bars.width(), bars.height());
            bars.boxes().forEach(one -> box.add(bounds(one).orElseThrow()));
            return Optional.of(box);
        } else if (mark instanceof Mark.Shape shape) {
            Rectangle2D box = new Rectangle2D.Double(shape.points().get(0), shape.points().get(1), 0, 0);
            for (int i = 2; i < shape.points().size(); i += 2) {
                box.add(shape.points().get(i), shape.points().get(i + 1));
            }
            return Optional.of(box);
        }
        return Optional.empty();
    }
}
