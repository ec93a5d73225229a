package org.fieldfold.typeset;

import org.fieldfold.fold.Gathering;

/** A guide set on as few sheets as hold it, and these sheets. */
public record GatheredGuide(SetGuide guide, Gathering sheets) {
}
