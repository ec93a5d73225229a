/**
 * The handbook as HTML, in one file and as a folder, and the specialist's review page. Everything is readable
 * and every link works without script; nothing is loaded from anywhere.
 */
package org.fieldfold.handbook;
