/**
 * Stopping early: sequential plans, their stop lines as whole numbers, and what they really do to the two
 * wrong decisions once a smallest and a largest sample are set.
 */
package org.fieldfold.scouting.sequential;
