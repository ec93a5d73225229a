package org.fieldfold.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.function.Supplier;

/** The day that {@code sign} and {@code edition issue} write. */
final class Today {
    private Today() {
    }

    /**
     * The day of {@code SOURCE_DATE_EPOCH} (seconds since 1970 in UTC, as the reproducible builds project
     * specifies it), so that signing and issuing can be repeated; else the calendar's.
     */
    static LocalDate of(Optional<String> epoch, Supplier<LocalDate> calendar) {
        if (epoch.filter(seconds -> !seconds.isBlank()).isEmpty()) {
            return calendar.get();
        }
        try {
            LocalDate day = LocalDate.ofInstant(Instant.ofEpochSecond(Long.parseLong(epoch.get().strip())),
                    ZoneOffset.UTC);
            if (day.getYear() < 1970 || day.getYear() > 9999) {
                throw new DateTimeException("a day that no calendar shows: " + day);
            }
            return day;
        } catch (NumberFormatException | DateTimeException wrong) {
            throw new UncheckedIOException(new IOException(
                    "expected seconds since 1970 in SOURCE_DATE_EPOCH, found '" + epoch.get() + "'"));
        }
    }
}
