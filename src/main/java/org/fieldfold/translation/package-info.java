/** Every text of the base with its hash, what of it is translated, and the base in another language. */
package org.fieldfold.translation;
