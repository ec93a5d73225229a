/** Text with emphasis and links, as authors write it, free of any markup language and any layout. */
package org.fieldfold.prose;
