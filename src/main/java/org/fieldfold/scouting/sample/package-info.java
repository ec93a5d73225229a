/**
 * How many to look at: sample sizes, the precision a sample reaches, fixed-precision stop lines and
 * intervals.
 */
package org.fieldfold.scouting.sample;
