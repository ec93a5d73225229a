/** When to look: dates expected from many years of temperatures, and the season week by week. */
package org.fieldfold.scouting.calendar;
