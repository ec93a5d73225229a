package org.fieldfold;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.fieldfold.check.KeptFindings;
import org.fieldfold.content.InputFile;
import org.fieldfold.content.LoadedBase;
import org.fieldfold.edition.Comparison;
import org.fieldfold.edition.KeptFacts;
import org.fieldfold.edition.Ledger;
import org.fieldfold.edition.Snapshot;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.source.Finding;

/**
 * Judges one state of a base after the other and keeps what stayed: findings by what each rule read, facts by
 * the files of their records, ledgers as long as their files have the same bytes.
 */
final class KeptJudging implements Judging {
    private final KeptFindings findings = new KeptFindings();
    private final KeptFacts facts = new KeptFacts();
    private SortedMap<Path, Optional<byte[]>> ledgerFiles = new TreeMap<>();
    private Optional<Ledgers> ledgers = Optional.empty();

    @Override
    public List<Finding> rules(LoadedBase loaded, ContentBase base, LocalDate asOf) {
        return findings.check(base, asOf, hashes(loaded));
    }

    /** How often each rule was put the last time. */
    SortedMap<String, Integer> asked() {
        return findings.asked();
    }

    @Override
    public Ledgers ledgers(Path content) throws IOException {
        SortedMap<Path, Optional<byte[]>> files = Ledgers.files(content);
        if (ledgers.isEmpty() || !areSame(files)) {
            ledgers = Optional.of(Ledgers.of(content, files));
            ledgerFiles = files;
        }
        return ledgers.get();
    }

    private boolean areSame(SortedMap<Path, Optional<byte[]>> files) {
        return files.keySet().equals(ledgerFiles.keySet()) && files.keySet().stream().allMatch(file ->
                Arrays.equals(files.get(file).orElse(null), ledgerFiles.get(file).orElse(null)));
    }

    @Override
    public Snapshot facts(LoadedBase loaded, ContentBase base) {
        return facts.of(base, hashes(loaded));
    }

    @Override
    public Comparison changes(Ledger since, Snapshot now) {
        return facts.between("", since.facts(), "", now);
    }

    /** Of the files that were read, by path. */
    static Map<String, String> hashes(LoadedBase loaded) {
        return InputFile.hashes(loaded.inputs());
    }
}
