package org.fieldfold.pdf;

import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import org.fieldfold.fold.Imposition;
import org.fieldfold.typeset.SetPanel;
import org.fieldfold.typeset.SharedPanels;
import org.fieldfold.typeset.Tag;

/**
 * What all copies of a guide have in common, ready to print: on each page the panels that are no office's own and what
 * surrounds them, drawn and compressed, and what of the logical tree they hold. A copy takes it over and adds its own
 * panels, so that the same copy has the same bytes whether or not there are others.
 *
 * @param pages by their numbers
 * @param finished sections of which no copy has anything of its own, by their tags
 * @param loose nodes below the top of the tree that hold something and are in none of these sections
 * @param starts of the panels, by the place of the first thing on them
 * @param prelude how the file of every copy begins
 */
record Plate(List<Page> pages, Map<Tag, TagNode> finished, List<TagNode> loose, Resources resources,
        NavigableMap<Integer, Sheet.PanelPlace> starts, Prelude prelude) {
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
    static Plate of(PrintJob job, FrozenType type, ArtRoom art, Frozen colour) {
        Sheet sheet = Sheet.blank(job, type, art);
        job.guide().shared().panels().forEach(sheet::panel);
        sheet.surround();
        List<Page> pages = sheet.pages().stream().map(page -> new Page(FinishedStream.of(page.out().toBytes()),
                List.copyOf(page.owners()))).toList();
        Map<Tag, TagNode> finished = new IdentityHashMap<>();
        Set<TagNode> within = Collections.newSetFromMap(new IdentityHashMap<>());
        for (TagNode node : sheet.tree().document().children()) {
            if (!node.isEmpty() && job.guide().shared().sections().contains(node.tag())) {
                finished.put(node.tag(), node);
                gather(node, within);
            }
        }
        List<TagNode> loose = sheet.tree().nodes().stream().filter(node -> !node.isEmpty()
                && node.parent().isPresent() && !within.contains(node)).toList();
        List<TagNode> sections = sheet.tree().document().children().stream().filter(within::contains).toList();
        return new Plate(pages, finished, loose, sheet.resources(),
                Collections.unmodifiableNavigableMap(sheet.starts()),
                Prelude.of(sheet, pages.stream().map(Page::content).toList(), sections, colour));
    }

    private static void gather(TagNode node, Set<TagNode> all) {
        all.add(node);
        node.children().forEach(child -> gather(child, all));
    }

    /** The panels of a job that are no part of its plate, in reading order. */
    static List<SetPanel> own(PrintJob job) {
        Set<SetPanel> shared = Collections.newSetFromMap(new IdentityHashMap<>());
        shared.addAll(job.guide().shared().panels());
        return job.guide().panels().stream().filter(panel -> !shared.contains(panel))
                .sorted(Comparator.comparingInt(SetPanel::reading)).toList();
    }
}
