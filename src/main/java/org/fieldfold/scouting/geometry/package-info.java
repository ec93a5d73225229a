/**
 * Lengths, areas and counts in the field: hoops and covers, nets, borders, traps, walks and the calibration
 * strip.
 */
package org.fieldfold.scouting.geometry;
