/** Findings for programs: JSON, SARIF and JUnit, beside the text that people read. */
package org.fieldfold.report;
