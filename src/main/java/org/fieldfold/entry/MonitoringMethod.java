package org.fieldfold.entry;

/** How a pest is looked for. */
public enum MonitoringMethod {
    PLANT_INSPECTION, LEAF_COUNT, FRUIT_INSPECTION, BEAT_TRAY, SWEEP_NET, PHEROMONE_TRAP,
    STICKY_TRAP, BAIT_TRAP, LIGHT_TRAP, SOIL_SAMPLE, DEGREE_DAYS
}
