/**
 * Folds as data, proved by folding: a scheme names the panels of a sheet, its folds in order and its cuts;
 * the sheet is folded as a pile of layers, and reading order, cover, orientation, nesting, panel widths and
 * folded size are what comes out. Pure geometry: lengths are points (1/72 inch) unless a name says
 * millimetres, origin at the top left, y down.
 */
package org.fieldfold.fold;
