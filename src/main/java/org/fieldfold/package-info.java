/**
 * Fieldfold compiles one body of pest knowledge into the things people carry. The stages, in order:
 * {@code source} and {@code entry} are what is known, {@code content} reads it from files, {@code edition}
 * puts the year and the office on it, {@code check} judges it, {@code manuscript} says what is to be read and
 * in which order, {@code typeset} fills the panels that {@code fold} derives, {@code pdf} and
 * {@code handbook} write what people hold. {@code Compiler} is the whole of it in one method.
 */
package org.fieldfold;
