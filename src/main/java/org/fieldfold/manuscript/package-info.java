/**
 * What is to be read and in which order, as a tree of blocks, before any layout. A guide and the handbook are
 * made from the same blocks, so that the tiers stand in the same order in both.
 */
package org.fieldfold.manuscript;
