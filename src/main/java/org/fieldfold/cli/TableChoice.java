package org.fieldfold.cli;

import java.util.Locale;
import java.util.Optional;
import org.fieldfold.content.TableKind;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Which table is meant: one of the base, or the texts of a language. */
final class TableChoice {
    /** As tables are named. */
    enum Name {
        THRESHOLDS, MATERIALS, MONITORING, TRANSLATIONS
    }

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "TABLE",
            description = "thresholds, materials, monitoring or translations")
    private Name name;

    @Option(names = "--language", paramLabel = "LANGUAGE", description = "for translations: the language, as in es")
    private Optional<String> language = Optional.empty();

    /** The language of translations; empty for a table of the base. */
    Optional<String> language() {
        if (language.isPresent() != (name == Name.TRANSLATIONS)) {
            throw new ParameterException(spec.commandLine(), language.isPresent()
                    ? "expected --language with translations only, found it with "
                    + name.name().toLowerCase(Locale.ROOT)
                    : "expected --language LANGUAGE with translations, as in --language es, found none");
        }
        return language;
    }

    /** The table of the base. */
    TableKind kind() {
        return TableKind.valueOf(name.name());
    }
}
