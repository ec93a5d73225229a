package org.fieldfold.fold;

/**
 * A face as its reader meets it.
 *
 * @param up where its upper edge points on the sheet as laid, seen from above
 */
record ReadFace(Face face, Heading up, PanelRole role) {
}
