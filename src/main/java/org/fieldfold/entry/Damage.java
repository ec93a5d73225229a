package org.fieldfold.entry;

/** What a pest does to the crop. */
public record Damage(
        @Describe("plant part") PlantPart part,
        @Describe("what is seen") DamageSign sign,
        @Describe("in a sentence") Text text) {
}
