package org.fieldfold.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The options that commands on a content base share. */
final class BaseOptions {
    @Option(names = "--content", paramLabel = "DIR", defaultValue = "content",
            description = "the content base (default: ${DEFAULT-VALUE})")
    Path content;

    @Option(names = "--as-of", paramLabel = "DATE",
            description = "day against which staleness is measured, as in 2027-01-15 (default: the edition's "
                    + "planned issue date)")
    Optional<LocalDate> asOf = Optional.empty();
}
