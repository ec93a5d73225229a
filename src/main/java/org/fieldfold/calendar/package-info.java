/**
 * The scouting calendar: facts of an entry and the temperatures of a station become days and weeks in which
 * to look. It only computes; what is said about it is the manuscript's.
 */
package org.fieldfold.calendar;
