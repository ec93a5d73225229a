/**
 * What was read of a base while something was made of it, so that it is made again only when that is no longer
 * the same. Whoever makes something reads the base as ever and cannot forget to say what it leans on.
 */
package org.fieldfold.trace;
