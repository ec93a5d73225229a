/**
 * What earlier builds made and a later one may take instead of making it again: found by a hash of all that
 * it was made of, the program included. Nothing here is ever needed: without it everything is made anew.
 */
package org.fieldfold.kept;
