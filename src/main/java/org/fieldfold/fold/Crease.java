package org.fieldfold.fold;

/**
 * A folded joint.
 *
 * @param valley whether it closes towards the face that lies up at the start
 * @param step the fold that makes it, counted from 1 as they are made
 * @param plain whether nothing there was turned before, so that the line is where the folder sees it
 */
record Crease(Joint joint, boolean valley, int step, boolean plain) {
}
