package org.fieldfold.entry;

import java.util.List;
import java.util.Optional;

/**
 * What can be done, sealed by tier. In a file each measure names its {@code tier}, 1 to 3, and measures stand
 * in tier order: prevention and how the crop is grown, then barriers and natural enemies, and a material only
 * when those are not enough (the order of 7 CFR 205.206 (a), (b) and (e)).
 */
public sealed interface Control {
    /** 1, 2 or 3. */
    int tier();

    /** For whom; empty for everybody. */
    List<Audience> audiences();

    /** Tier 1: how the crop is grown. */
    record Cultural(
            @Describe("id of the practice, if it has a page") Optional<String> practice,
            @Describe("what to do, the verb first") Text measure,
            @Describe("for whom; leave out for everybody") List<Audience> audiences) implements Control {
        @Override
        public int tier() {
            return 1;
        }
    }

    /** Tier 2: barriers, hands, traps that remove, and natural enemies. */
    record Exclusion(
            @Describe("id of the practice, if it has a page") Optional<String> practice,
            @Describe("id of the natural enemy that is released or helped") Optional<String> enemy,
            @Describe("what to do, the verb first") Text measure,
            @Describe("for a cover on an insect-pollinated crop: when it comes off") Optional<Text> comesOff,
            @Describe("for whom; leave out for everybody") List<Audience> audiences) implements Control {
        @Override
        public int tier() {
            return 2;
        }
    }

    /** Tier 3: a material, last, and only on a condition. */
    record Insecticide(
            @Describe("id of the active ingredient, from active-ingredients.yaml") String material,
            @Describe("the condition under which it is used, as in 'only past the count'")
            Optional<Text> when,
            @Describe("life stages that it reaches") List<LifeStage> against,
            @Describe("growth stages at which it is used, BBCH") Optional<StageWindow> stages,
            @Describe("how bees are kept safe, when it is used at flowering") Optional<Text> bees,
            @Describe("anything else, never a rate") Optional<Text> note,
            @Describe("for whom; leave out for everybody") List<Audience> audiences) implements Control {
        @Override
        public int tier() {
            return 3;
        }
    }
}
