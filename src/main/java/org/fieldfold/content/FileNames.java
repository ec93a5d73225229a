package org.fieldfold.content;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;

/** What other machines make of a file's name. */
final class FileNames {
    /**
     * Names that Windows keeps for devices, whatever ending follows (Microsoft, Naming Files, Paths, and
     * Namespaces; value from memory).
     */
    private static final Set<String> DEVICES = Set.of("con", "prn", "aux", "nul", "com0", "com1", "com2", "com3",
            "com4", "com5", "com6", "com7", "com8", "com9", "lpt0", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5",
            "lpt6", "lpt7", "lpt8", "lpt9");

    private FileNames() {
    }

    /** Whether a file of this name, with or without an ending, cannot be kept on some machines. */
    static boolean isDevice(String name) {
        int dot = name.indexOf('.');
        return DEVICES.contains((dot < 0 ? name : name.substring(0, dot)).toLowerCase(Locale.ROOT));
    }

    /**
     * Equal for two names that some machine takes for one: those that differ only by capitals, or by how
     * Unicode writes a letter with its accent (UAX 15).
     */
    static String folded(String name) {
        String composed = Normalizer.normalize(name, Normalizer.Form.NFKC);
        return Normalizer.normalize(composed.toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT),
                Normalizer.Form.NFKC);
    }
}
