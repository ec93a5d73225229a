package org.fieldfold.fold;

/** One face of a panel: {@code upper} is the one that lies up before the first fold. */
record Face(Cell cell, boolean upper) {
}
