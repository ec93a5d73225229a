package org.fieldfold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The day that is written: that of SOURCE_DATE_EPOCH, or the calendar's. */
class TodayTest {
    @Test
    void theEpochStandsInForTheCalendar() {
        LocalDate calendar = LocalDate.of(2027, 12, 3);
        assertEquals(calendar, Today.of(Optional.empty(), () -> calendar));
        assertEquals(calendar, Today.of(Optional.of(" "), () -> calendar));
        // 10^9 seconds: 2001-09-09T01:46:40Z (value from memory, widely known)
        assertEquals(LocalDate.of(2001, 9, 9), Today.of(Optional.of("1000000000"), () -> calendar));
        assertEquals(LocalDate.of(1970, 1, 1), Today.of(Optional.of("86399"), () -> calendar));
        for (String wrong : new String[] {"soon", "1.5", "99999999999999999999", "9999999999999999"}) {
            assertThrows(UncheckedIOException.class, () -> Today.of(Optional.of(wrong), () -> calendar), wrong);
        }
    }
}
