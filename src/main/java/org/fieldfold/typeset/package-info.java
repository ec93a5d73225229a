/** Fills panels: type, lines, and the marks of a set panel with their tags. Knows no file format. */
package org.fieldfold.typeset;
