package org.fieldfold.fold;

import java.util.ArrayList;
import java.util.List;

/**
 * Sheets of one kind, laid on one another in the order in which they are read: all panels of a sheet come
 * before those of the next. In the file the sides follow as a printer takes them, front and back of each
 * sheet.
 *
 * @param sheet what every one of them looks like
 * @param sheets how many there are, at least one
 */
public record Gathering(Imposition sheet, int sheets) {
    public Gathering {
        if (sheets < 1) {
            throw new IllegalArgumentException("a gathering of " + sheets + " sheets");
        }
    }

    /** The panels of all sheets in reading order; only the first has a cover, only the last a back. */
    public List<PanelSlot> slots() {
        List<PanelSlot> slots = new ArrayList<>();
        for (int reading = 1; reading <= sheets * perSheet(); reading++) {
            slots.add(slot(reading));
        }
        return List.copyOf(slots);
    }

    /** The slot with this reading number, counted through all sheets. */
    public PanelSlot slot(int reading) {
        if (reading < 1 || reading > sheets * perSheet()) {
            throw new IllegalArgumentException("readings are 1 to " + sheets * perSheet() + ": " + reading);
        }
        PanelSlot slot = sheet.slot((reading - 1) % perSheet() + 1);
        int at = sheetOf(reading);
        boolean inside = slot.role() == PanelRole.COVER && at > 0
                || slot.role() == PanelRole.LAST && at < sheets - 1;
        return new PanelSlot(reading, slot.side(), slot.x(), slot.y(), slot.width(), slot.height(),
                slot.rotation(), slot.live(), inside ? PanelRole.INNER : slot.role());
    }

    /** The sheet, from 0, on which a panel lies. */
    public int sheetOf(int reading) {
        return (reading - 1) / perSheet();
    }

    /** The slots on one side of one sheet, from the top left, line by line. */
    public List<PanelSlot> on(int at, Side side) {
        return sheet.on(side).stream().map(slot -> slot(at * perSheet() + slot.reading())).toList();
    }

    private int perSheet() {
        return sheet.slots().size();
    }
}
