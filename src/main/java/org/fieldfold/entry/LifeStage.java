package org.fieldfold.entry;

/** A stage in the life of an insect or mite, or the colony in which it is found. */
public enum LifeStage {
    EGG, LARVA, NYMPH, PUPA, ADULT, COLONY
}
