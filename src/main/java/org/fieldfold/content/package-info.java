/**
 * Files become facts: the folder is walked, each file decoded, its YAML read into nodes, and the nodes bound
 * to the records of {@code entry}. Whatever is wrong with a file's form becomes a finding at its own place,
 * and reading goes on.
 */
package org.fieldfold.content;
