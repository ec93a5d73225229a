package org.fieldfold.check;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.NetHole;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Practice;
import org.fieldfold.scouting.geometry.NetBody;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Span;

/** A net is fine enough for every pest that it is said to stop. */
final class NetTooCoarse implements Rule {
    @Override
    public String id() {
        return "net-too-coarse";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (Placed<Practice> practice : base.practices().values()) {
            for (int i = 0; i < practice.value().nets().size(); i++) {
                NetHole net = practice.value().nets().get(i);
                for (int j = 0; j < net.stops().size(); j++) {
                    check(net, net.stops().get(j), base, practice.at("nets", i, "stops", j), found);
                }
            }
        }
    }

    private void check(NetHole net, String pest, ContentBase base, Span span, Consumer<Finding> found) {
        Optional<NetBody> body = Optional.ofNullable(base.pests().get(pest)).map(Placed::value)
                .flatMap(PestEntry::netBody);
        if (body.isEmpty()) {
            found.accept(Finding.warning(span, id(), "expected the width of '" + pest
                    + "' to choose a net by, found none", "add 'body-width:' to the stage that comes from "
                    + "outside, or take it off this net"));
        } else if (net.hole() > body.get().largestHoleMm() + 1e-9) {
            found.accept(Finding.error(span, id(), "expected holes of at most "
                    + Words.rounded(body.get().largestHoleMm()) + " mm against '" + pest + "', found "
                    + Words.of(net.hole()) + " mm", "take it off this net, or take a finer one"));
        }
    }
}
