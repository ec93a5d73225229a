package org.fieldfold.entry;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** An animal that eats or infects pests. */
public record NaturalEnemy(
        @Describe("the file's name without its ending") String id,
        @Describe("names") Names names,
        @Describe("ids of the drawings; leave out to take those that show this entry") List<String> figures,
        @Describe("life stages") List<StageDescription> stages,
        @Describe("what it is mistaken for") List<LookAlike> lookAlikes,
        @Describe("ids of the pests it keeps down") List<String> keepsDown,
        @Describe("what it does") Text helps,
        @Describe("how to keep it") Text conserve,
        @Describe("how it is released, where that is done") Optional<Text> release,
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
