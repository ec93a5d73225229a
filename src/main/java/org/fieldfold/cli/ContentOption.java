package org.fieldfold.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** Where the content base is. */
final class ContentOption {
    @Option(names = "--content", paramLabel = "DIR", defaultValue = "content",
            description = "the content base (default: ${DEFAULT-VALUE})")
    Path folder;
}
