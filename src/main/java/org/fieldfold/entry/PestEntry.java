package org.fieldfold.entry;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fieldfold.scouting.CountCard;
import org.fieldfold.scouting.geometry.NetBody;

/** One pest: what it looks like, how to count it, when it pays to act, and what to do, in tier order. */
public record PestEntry(
        @Describe("the file's name without its ending") String id,
        @Describe("names") Names names,
        @Describe("ids of the crops it harms, from crops.yaml") List<String> crops,
        @Describe("ids of the drawings, best first; leave out to take those that show this entry")
        List<String> figures,
        @Describe("life stages, the one that a scout meets first standing first")
        List<StageDescription> stages,
        @Describe("what it is mistaken for") List<LookAlike> lookAlikes,
        @Describe("what it does to the crop") List<Damage> damage,
        @Describe("a sentence on its year: generations, when it arrives") Optional<Text> year,
        @Describe("where it spends the winter") Optional<WinterPlace> overwinters,
        @Describe("how to look for it") List<Monitoring> monitoring,
        @Describe("at what count it pays to act") List<Threshold> thresholds,
        @Describe("what to do, in tier order") List<Control> controls,
        @Describe("modes of action over the broods of a season") Optional<SeasonRotation> rotation,
        @Describe("ids of the natural enemies to spare") List<String> spare,
        @Describe("cautions, always shown with tier 3") List<Text> cautions,
        @Describe("ids of the sources, from sources.yaml; value-from-memory for what nobody looked up")
        List<String> sources,
        @Describe("day on which it was last re-read") Optional<LocalDate> revised,
        @Describe("id of the reviewer who re-read it") Optional<String> reviser,
        @Describe("true when the reviewer carried it over from the last edition unchanged")
        Optional<Boolean> carriedOver,
        @Describe("hash of the facts that the reviewer signed; 'fieldfold sign' writes it")
        Optional<String> signedFacts,
        @Describe("hashes of the materials, prices and drawings that it was signed with; 'fieldfold sign' writes "
        + "them")
        Optional<String> signedWith) implements Reviewed {
    public List<Monitoring> monitoringFor(Audience audience) {
        return monitoring.stream().filter(look -> audience.among(look.audiences())).toList();
    }

    public List<Threshold> thresholdsFor(Audience audience) {
        return thresholds.stream().filter(threshold -> audience.among(threshold.audiences())).toList();
    }

    /** The measures of one tier for these readers, as they stand in the file. */
    public List<Control> controlsFor(Audience audience, int tier) {
        return controls.stream()
                .filter(control -> control.tier() == tier && audience.among(control.audiences())).toList();
    }

    /**
     * How the units of a threshold are looked at: by the monitoring that it names, or the first one for these
     * readers.
     */
    public Optional<Monitoring> monitoringOf(Threshold threshold, Audience audience) {
        return threshold.monitoring().isPresent()
                ? monitoring.stream().filter(look -> look.id().equals(threshold.monitoring().get()))
                        .findFirst()
                : monitoringFor(audience).stream().findFirst();
    }

    /** By which a net is chosen: the narrowest of the stages whose width is given; empty when none is. */
    public Optional<NetBody> netBody() {
        return stages.stream().flatMap(stage -> stage.bodyWidth().stream())
                .filter(width -> width.from() > 0 && width.triedHole().map(hole -> hole > 0).orElse(true))
                .map(width -> new NetBody(id, width.from(), width.triedHole().map(OptionalDouble::of)
                        .orElse(OptionalDouble.empty())))
                .min(Comparator.comparingDouble(NetBody::largestHoleMm));
    }

    /** The count card of a threshold, where it has one. */
    public Optional<CountCard> cardOf(Threshold threshold, Audience audience) {
        return threshold.figure().flatMap(figure -> monitoringOf(threshold, audience)
                .flatMap(Monitoring::plan).flatMap(plan -> CountCard.of(figure, plan)));
    }
}
