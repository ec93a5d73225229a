package org.fieldfold.fold;

/**
 * A folded joint.
 *
 * @param valley whether it closes towards the face that lies up at the start
 */
record Crease(Joint joint, boolean valley) {
}
