/**
 * Prints set guides: a tagged PDF for both sides of a sheet, with type, drawings, links and marks for the
 * folder. The only package that knows PDF. {@link org.fieldfold.pdf.Press} is its door.
 */
package org.fieldfold.pdf;
