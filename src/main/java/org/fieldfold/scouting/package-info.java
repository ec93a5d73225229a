/**
 * From a count in the row, or a station's temperatures, to a decision: thresholds as whole-sample counts, and
 * beside it degree-days, sampling plans, what control pays for, field geometry and waiting times. Pure
 * arithmetic: no file, no clock, no language.
 */
package org.fieldfold.scouting;
