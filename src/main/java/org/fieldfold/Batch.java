package org.fieldfold;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.pdf.PrintJob;
import org.fieldfold.trace.KeptResults;

/**
 * Sheets that are made of the same things. What is known of them is made once, and known from build to build until
 * something that was read for it has changed.
 *
 * @param name that no other batch of a language has
 * @param of what they are made of besides the base
 * @param others batches that were taken before, and on which this one leans
 * @param make makes them of the base that it is given, in their language
 */
record Batch(String name, String of, List<String> others, Function<ContentBase, List<PrintedSheet>> make) {
    Batch {
        others = List.copyOf(others);
    }

    /**
     * The sheets; those that are known are set only if they must be printed after all.
     *
     * @param said the base in their language
     */
    List<PrintedSheet> take(KeptResults<List<SheetFacts>>.Round round, ContentBase said) {
        Making making = new Making();
        List<SheetFacts> facts = round.take(name, of, others, making::made);
        return making.sheets.orElseGet(() -> facts.stream().map(known -> new PrintedSheet(known,
                () -> again(known.path(), said))).toList());
    }

    private PrintJob again(String path, ContentBase said) {
        return make.apply(said).stream().filter(sheet -> sheet.facts().path().equals(path)).findFirst()
                .orElseThrow(() -> new IllegalStateException("nothing was read that has changed, and yet "
                        + name + " lacks " + path)).job().get();
    }

    /** Keeps what is made beside what is known of it. */
    private final class Making {
        private Optional<List<PrintedSheet>> sheets = Optional.empty();

        List<SheetFacts> made(ContentBase read) {
            List<PrintedSheet> made = make.apply(read);
            sheets = Optional.of(made);
            return made.stream().map(PrintedSheet::facts).toList();
        }
    }
}
