package org.fieldfold.typeset;

import java.util.List;

/** One panel, set. {@code reading} is the place at which it is read, counted from 1. */
public record SetPanel(int reading, List<Mark> marks) {
    public SetPanel {
        marks = List.copyOf(marks);
    }
}
