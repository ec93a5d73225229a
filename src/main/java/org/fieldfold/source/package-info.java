/** Where a fact stands in a file, and what is to be said about it: source files, spans and findings. */
package org.fieldfold.source;
