package org.fieldfold.entry;

import org.fieldfold.prose.Prose;

/** A longer piece of prose for the handbook. */
public record Chapter(String id, @Translated String title, Prose body) {
}
