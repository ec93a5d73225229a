/** The folder that a build fills, whole or not at all, and the manifest of what is in it. */
package org.fieldfold.output;
