package org.fieldfold.entry;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks words of one line, or a list of them, that readers see and that stand in another language there.
 * Texts ({@link Text}, prose) need no mark: they are translated always.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Translated {
    /** Whether the words may stay as they are: names of bodies, places and people. */
    boolean optional() default false;
}
