/**
 * Heat summed day by day: the methods, their thresholds and cutoffs, and the date on which a sum is reached.
 */
package org.fieldfold.scouting.degreeday;
