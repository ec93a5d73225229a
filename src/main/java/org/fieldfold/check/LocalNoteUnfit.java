package org.fieldfold.check;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.LocalNote;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/** A local note is signed by somebody at its office, is of this season, and has a panel to stand on. */
final class LocalNoteUnfit implements Rule {
    @Override
    public String id() {
        return "local-note-unfit";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (Placed<Office> office : base.offices().values()) {
            for (int i = 0; i < office.value().notes().size(); i++) {
                signer(office, i, found);
                length(office, i, found);
                date(office, i, base.edition().value(), asOf, found);
                panel(office, i, base, found);
            }
        }
    }

    private void signer(Placed<Office> office, int i, Consumer<Finding> found) {
        String signer = office.value().notes().get(i).by();
        if (office.value().contact().people().stream().noneMatch(signer::equals)) {
            found.accept(Finding.warning(office.at("notes", i, "by"), id(),
                    "expected somebody at this office ("
                    + String.join(", ", office.value().contact().people()) + "), found '" + signer + "'",
                    "let somebody sign it who is named under 'people:'"));
        }
    }

    private void length(Placed<Office> office, int i, Consumer<Finding> found) {
        if (office.value().notes().get(i).text().handbook().isPresent()) {
            found.accept(Finding.info(office.at("notes", i, "text", "handbook"), id(), "expected a note for the "
                    + "pocket alone, found a longer form, which is printed nowhere", "take it out"));
        }
    }

    private void date(Placed<Office> office, int i, Edition edition, LocalDate asOf,
            Consumer<Finding> found) {
        LocalDate date = office.value().notes().get(i).date();
        long holds = ChronoUnit.DAYS.between(edition.validFrom(), edition.validUntil()) + 1;
        if (date.isAfter(edition.validUntil())) {
            found.accept(Finding.error(office.at("notes", i, "date"), id(),
                    "expected a day before this edition "
                    + "ends (" + edition.validUntil() + "), found " + date,
                    "write the day on which it was written"));
        } else if (date.isAfter(asOf)) {
            found.accept(Finding.info(office.at("notes", i, "date"), id(), "expected a day up to " + asOf
                    + ", found " + date, "right if it was written since this edition was issued; "
                    + "'--as-of' sets the day that is measured against"));
        } else if (date.plusDays(holds).isBefore(asOf)) {
            found.accept(Finding.warning(office.at("notes", i, "date"), id(),
                    "expected a note no older than an "
                    + "edition holds (" + holds + " days before " + asOf + "), found one of " + date,
                    "ask whether it is still so, and date it anew or take it out"));
        }
    }

    private void panel(Placed<Office> placed, int i, ContentBase base, Consumer<Finding> found) {
        Office office = placed.value();
        LocalNote note = office.notes().get(i);
        if (!base.pests().containsKey(note.entry())) {
            return; // said already
        }
        if (office.leaveOut().contains(note.entry())) {
            found.accept(Finding.warning(placed.at("notes", i, "entry"), id(),
                    "expected an entry that this office "
                    + "prints, found '" + note.entry() + "', which it leaves out",
                    "take the note out, or the entry "
                    + "from 'leave-out:'"));
        } else if (base.guides().values().stream().map(Placed::value).noneMatch(guide ->
                office.handsOut(guide) && guide.entries().contains(note.entry()))) {
            found.accept(Finding.warning(placed.at("notes", i, "entry"), id(),
                    "expected an entry of the guides "
                    + "that this office hands out, found '" + note.entry() + "', which is in none of them",
                    "take the note out"));
        } else if (office.notes().subList(0, i).stream().anyMatch(one -> one.entry().equals(note.entry()))) {
            found.accept(Finding.error(placed.at("notes", i, "entry"), id(), "expected one note on '"
                    + note.entry()
                    + "', found another before it", "make one of them"));
        }
    }
}
