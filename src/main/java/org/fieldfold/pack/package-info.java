/**
 * What a county office needs at its counter beside its sheets: a page that says which to print and how to fold
 * it, and the whole in one file.
 */
package org.fieldfold.pack;
