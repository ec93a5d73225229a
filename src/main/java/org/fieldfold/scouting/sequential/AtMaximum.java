package org.fieldfold.scouting.sequential;

/** What to do when the largest sample is counted and neither line was reached. */
public enum AtMaximum {
    /** Act. */
    ACT,
    /** Do not act now; flag the place and count again in two or three days. */
    COUNT_AGAIN,
    /** Act when the total lies half-way between the lines or higher; otherwise count again. */
    NEARER_LINE
}
