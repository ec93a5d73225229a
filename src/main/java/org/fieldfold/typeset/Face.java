package org.fieldfold.typeset;

/** The four faces in use. */
public enum Face { REGULAR, BOLD, ITALIC, BOLD_ITALIC }
