/**
 * A page on this machine that follows the files: watches a folder, draws set panels for a screen, and serves
 * both to a browser on the same machine, and to nobody else.
 */
package org.fieldfold.preview;
