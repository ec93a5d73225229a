package org.fieldfold.entry;

/** As what a guide is printed besides the pocket foldout. */
public enum GuideForm {
    LARGE_PRINT, POSTER
}
