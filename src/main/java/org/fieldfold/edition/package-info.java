/**
 * The year: what was issued and can be proved, what has changed since, and what is still to be re-read. Facts
 * are compared and hashed in a form that knows neither positions nor line breaks.
 */
package org.fieldfold.edition;
