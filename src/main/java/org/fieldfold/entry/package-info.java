/** The facts as records: pest entries, natural enemies, practices, materials, crops, guides and offices. */
package org.fieldfold.entry;
