/**
 * After a material was used: when one may go in, when one may harvest, and what may follow it in the season.
 */
package org.fieldfold.scouting.season;
