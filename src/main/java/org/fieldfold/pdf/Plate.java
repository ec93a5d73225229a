package org.fieldfold.pdf;

import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import org.fieldfold.fold.Imposition;
import org.fieldfold.typeset.SetPanel;
import org.fieldfold.typeset.SharedPanels;

/**
 * What all copies of a guide have in common, ready to print: on each page the panels that are no office's own and what
 * surrounds them, drawn and compressed, and what of the logical tree they hold. A copy takes it over and adds its own
 * panels, so that the same copy has the same bytes whether or not there are others.
 *
 * @param pages by their numbers
 * @param nodes those below the top of the tree that hold something; the top is each copy's own
 * @param starts of the panels, by the place of the first thing on them
 */
record Plate(List<Page> pages, List<TagNode> nodes, Resources resources,
        NavigableMap<Integer, Sheet.PanelPlace> starts) {
    /**
     * What lies on one page.
     *
     * @param owners of its marked stretches, by their numbers
     */
    record Page(FinishedStream content, List<TagNode> owners) {}

    /**
     * All that a plate depends on. Panels and sheet are the same only if they are the same objects: comparing what
     * they hold would take longer than drawing it.
     */
    record Key(SharedPanels shared, Imposition sheet, int sheets, PrintJob.Surround around, SheetWords words,
            Optional<String> proof) {
        static Key of(PrintJob job) {
            return new Key(job.guide().shared(), job.imposition(), job.sheets().sheets(), job.around(), job.words(),
                    job.proof());
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Key key && shared == key.shared && sheet == key.sheet && sheets == key.sheets
                    && around == key.around && words.equals(key.words) && proof.equals(key.proof);
        }

        @Override
        public int hashCode() {
            return System.identityHashCode(shared) * 31 + System.identityHashCode(sheet);
        }
    }

    /** Draws what a job shares with others of its kind; the rest of the job makes no difference. */
    static Plate of(PrintJob job, FrozenType type, ArtRoom art) {
        Sheet sheet = Sheet.blank(job, type, art);
        job.guide().shared().panels().forEach(sheet::panel);
        sheet.surround();
        return new Plate(sheet.pages().stream().map(page -> new Page(FinishedStream.of(page.out().toBytes()),
                List.copyOf(page.owners()))).toList(),
                sheet.tree().nodes().stream()
                        .filter(node -> !node.isEmpty() && node.parent().isPresent()).toList(), sheet.resources(),
                Collections.unmodifiableNavigableMap(sheet.starts()));
    }

    /** The panels of a job that are no part of its plate, in reading order. */
    static List<SetPanel> own(PrintJob job) {
        Set<SetPanel> shared = Collections.newSetFromMap(new IdentityHashMap<>());
        shared.addAll(job.guide().shared().panels());
        return job.guide().panels().stream().filter(panel -> !shared.contains(panel))
                .sorted(Comparator.comparingInt(SetPanel::reading)).toList();
    }
}
