package org.fieldfold.report;

/**
 * How easy something is to read.
 *
 * @param what a guide, or the place of a text
 * @param measure school grade in English, ease in Spanish
 * @param plain whether it is as plain as it should be
 * @param hard the sentence that spoils it most, or for a guide how many of its texts are not plain
 */
public record ReadingRow(String what, double measure, boolean plain, String hard) {
}
