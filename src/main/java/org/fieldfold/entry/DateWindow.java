package org.fieldfold.entry;

import java.time.MonthDay;

/** Days of any year, both included; a window may run over the new year. */
public record DateWindow(
        @Describe("first day, --MM-DD written as MM-DD") MonthDay from,
        @Describe("last day, MM-DD") MonthDay to) {
}
