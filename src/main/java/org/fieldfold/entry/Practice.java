package org.fieldfold.entry;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A practice with a page of its own: rotation, trap crop, row cover, tunnel and so on. */
public record Practice(
        @Describe("the file's name without its ending") String id,
        @Describe("name, as growers say it") @Translated String name,
        @Describe("tier it belongs to: 1 or 2") int tier,
        @Describe("kind, from the fixed vocabulary") PracticeKind kind,
        @Describe("what it is and what it is good for") Text summary,
        @Describe("steps, in order") List<Text> steps,
        @Describe("what goes wrong") List<Text> watch,
        @Describe("for a tunnel: how the crop is watered under it") Optional<Text> irrigation,
        @Describe("for a tunnel: how it is kept from getting too hot") Optional<Text> ventilation,
        @Describe("for a cover or tunnel: weeds under it") Optional<Text> weeds,
        @Describe("nets by their holes") List<NetHole> nets,
        @Describe("hoops and beds, for a table of lengths") Optional<TunnelSizes> tunnel,
        @Describe("for a trap crop: the share of the field that it takes") Optional<BorderSize> border,
        @Describe("traps for an area") Optional<PerArea> perArea,
        @Describe("ids of the sources") List<String> sources,
        @Describe("day on which it was last re-read") Optional<LocalDate> revised,
        @Describe("id of the reviewer who re-read it") Optional<String> reviser,
        @Describe("true when the reviewer carried it over from the last edition unchanged")
        Optional<Boolean> carriedOver,
        @Describe("hash of the facts that the reviewer signed; 'fieldfold sign' writes it")
        Optional<String> signedFacts,
        @Describe("hashes of the materials, prices and drawings that it was signed with; 'fieldfold sign' writes "
        + "them")
        Optional<String> signedWith) implements Reviewed {
}
