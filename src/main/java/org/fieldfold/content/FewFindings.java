package org.fieldfold.content;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.fieldfold.source.Finding;
import org.fieldfold.source.SourceFile;

/** The findings of one file: of a file that is wrong throughout, the first ones, and that there are more. */
public final class FewFindings extends ArrayList<Finding> {
    static final int MOST = 500;
    /** Of all files while they are read; each takes room. */
    private static final int MOST_HELD = 50_000;
    /** Of all files together: nobody reads more. */
    static final int MOST_TOGETHER = 10_000;
    private static final long serialVersionUID = 1;

    private final int most;

    FewFindings() {
        this(MOST);
    }

    /** @param most how many, before the one that says so */
    FewFindings(int most) {
        this.most = most;
    }

    /** How many of each file are kept when there are so many files: the same whatever order they are read in. */
    static int ofEach(int files) {
        return Math.max(1, Math.min(MOST, MOST_HELD / Math.max(1, files)));
    }

    /**
     * All findings; where they are too many, as many of each file as there is room for, the gravest before the
     * others, and one at the least.
     *
     * @param findings sorted
     */
    public static List<Finding> ofAll(List<Finding> findings) {
        if (findings.size() <= MOST_TOGETHER) {
            return findings;
        }
        Map<SourceFile, FewFindings> files = new LinkedHashMap<>();
        int[] counts = findings.stream().collect(Collectors.groupingBy(finding -> finding.span().file(),
                Collectors.summingInt(finding -> 1))).values().stream().mapToInt(Integer::intValue).toArray();
        int most = 1;
        while (together(counts, most + 1) <= MOST_TOGETHER) {
            most++;
        }
        int few = most;
        findings.stream().sorted(Comparator.comparing(Finding::severity)).forEach(finding ->
                files.computeIfAbsent(finding.span().file(), file -> new FewFindings(few)).add(finding));
        return files.values().stream().flatMap(List::stream).sorted().toList();
    }

    private static long together(int[] counts, int most) {
        return Arrays.stream(counts).mapToLong(count -> Math.min(count, most)).sum();
    }

    @Override
    public boolean add(Finding finding) {
        if (size() < most) {
            return super.add(finding);
        }
        return size() == most && super.add(new Finding(finding.severity(), finding.span(), finding.rule(),
                finding.message(), "mend the first ones: there are more than " + most + " in this file, and this is "
                        + "the last that is said"));
    }

    @Override
    public boolean addAll(Collection<? extends Finding> more) {
        boolean changed = false;
        for (Finding finding : more) {
            changed |= add(finding);
        }
        return changed;
    }
}
