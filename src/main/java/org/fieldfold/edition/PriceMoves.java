package org.fieldfold.edition;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.InjuryTerms;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Price;
import org.fieldfold.entry.Threshold;
import org.fieldfold.scouting.ThresholdFigure;
import org.fieldfold.scouting.decision.InjuryLevel;

/**
 * Printed thresholds that are no longer those which prices give: by more than a tenth, whatever the reason; or
 * by as much as the printed number can show, where a price has changed since the last edition or was looked up
 * after the entry was signed.
 */
final class PriceMoves {
    /** As in the rule threshold-moved (our own limit, no source). */
    private static final double TENTH = 0.1;
    private static final MathContext SHOWN = new MathContext(3, RoundingMode.HALF_UP);

    private final ContentBase base;
    private final Optional<Ledger> last;

    /** @param last the last edition that was issued before this one */
    PriceMoves(ContentBase base, Optional<Ledger> last) {
        this.base = base;
        this.last = last;
    }

    /** What is to be said of each threshold of an entry that prices have moved. */
    List<String> of(PestEntry pest) {
        List<String> moves = new ArrayList<>();
        for (Threshold threshold : pest.thresholds()) {
            Optional<Double> printed = threshold.figure().map(ThresholdFigure::value).filter(value -> value > 0);
            Optional<InjuryTerms> terms = threshold.injuryLevel();
            Optional<Double> now = terms.flatMap(known -> known.actAt(base.prices()));
            if (printed.isPresent() && now.isPresent()) {
                List<String> causes = causes(terms.get(), pest);
                double moved = InjuryLevel.moved(printed.get(), now.get());
                if (Math.abs(moved) > TENTH + 1e-9
                        || !causes.isEmpty() && !isPrinted(printed.get(), now.get())) {
                    moves.add("'" + threshold.id() + "' printed as " + shown(printed.get()) + ", today's prices "
                            + "give " + shown(now.get()) + " (" + (moved > 0 ? "+" : "")
                            + shown(moved * 100) + " %)" + (causes.isEmpty() ? ""
                            : "; " + String.join(", ", causes)));
                }
            }
        }
        return moves;
    }

    /** Whether a number is the printed one, written with as many decimals. */
    private static boolean isPrinted(double printed, double now) {
        BigDecimal written = BigDecimal.valueOf(printed).stripTrailingZeros();
        return BigDecimal.valueOf(now).setScale(Math.max(0, written.scale()), RoundingMode.HALF_UP)
                .compareTo(written) == 0;
    }

    private static String shown(double number) {
        return new BigDecimal(number).round(SHOWN).stripTrailingZeros().toPlainString();
    }

    private List<String> causes(InjuryTerms terms, PestEntry pest) {
        return Stream.of(terms.cost(), terms.value()).distinct().filter(base.prices()::containsKey)
                .map(id -> base.prices().get(id).value())
                .flatMap(price -> cause(price, pest).stream()).collect(Collectors.toList());
    }

    private Optional<String> cause(Price price, PestEntry pest) {
        Optional<BigDecimal> was = last.flatMap(ledger -> ledger.facts().get("prices", price.id()))
                .flatMap(known -> known.facts().word("value")).map(BigDecimal::new);
        if (was.filter(old -> old.compareTo(BigDecimal.valueOf(price.value())) != 0).isPresent()) {
            return Optional.of(price.what() + " " + was.get().toPlainString() + " -> " + shown(price.value())
                    + " " + price.unit() + " since edition " + last.get().year());
        }
        return pest.revised().filter(signed -> price.asOf().isAfter(signed)).map(signed -> price.what() + " "
                + shown(price.value()) + " " + price.unit() + ", looked up on " + price.asOf()
                + " after the entry was signed on " + signed);
    }
}
