/** Judges the substance of what is known: one class a rule, and the rulebook that lists them. */
package org.fieldfold.check;
