package org.fieldfold.handbook;

/**
 * Writes path data as steps of whole numbers from point to point. Every point is put on the grid by itself, so
 * that roundings don't add up along a path.
 */
final class PathOnGrid {
    private final StringBuilder out = new StringBuilder();
    private final int scale;
    private char written;
    private long x;
    private long y;

    private PathOnGrid(int scale) {
        this.scale = scale;
    }

    /** @param scale steps of the grid for one unit of the drawing */
    static String of(PathData path, int scale) {
        PathOnGrid grid = new PathOnGrid(scale);
        path.segments().forEach(grid::segment);
        return grid.out.toString();
    }

    private void segment(PathData.Segment segment) {
        long[] steps = new long[segment.points().length];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = Math.round(segment.points()[i] * scale) - (i % 2 == 0 ? x : y);
        }
        switch (segment.kind()) {
            case 'z' -> write('z');
            case 'l' -> line(steps[0], steps[1]);
            default -> write(segment.kind(), steps);
        }
        x += steps[steps.length - 2];
        y += steps[steps.length - 1];
    }

    private void line(long right, long down) {
        if (down == 0) {
            write('h', right);
        } else if (right == 0) {
            write('v', down);
        } else {
            write('l', right, down);
        }
    }

    /** A command's letter stands only where it changes; a line behind a move needs none either. */
    private void write(char kind, long... steps) {
        boolean again = kind == written && kind != 'm' && kind != 'z' || kind == 'l' && written == 'm';
        if (!again) {
            out.append(kind);
        }
        for (int i = 0; i < steps.length; i++) {
            if ((again || i > 0) && steps[i] >= 0) {
                out.append(' ');
            }
            out.append(steps[i]);
        }
        written = kind;
    }
}
