package org.fieldfold.content;

/** An edit that cannot be made without touching more than it names. The file was left as it was. */
public final class EditRefused extends Exception {
    EditRefused(String message) {
        super(message);
    }
}
