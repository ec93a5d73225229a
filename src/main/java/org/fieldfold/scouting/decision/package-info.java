/** When control pays, and whether a flagged place is getting worse. */
package org.fieldfold.scouting.decision;
