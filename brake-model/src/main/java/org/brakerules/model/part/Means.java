package org.brakerules.model.part;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What a property of a part means, as a noun phrase a technician reads.
 *
 * <p>Kept at run time because the JSON Schema, the reasons and the reference pages print it.
 */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Means {
  /** The noun phrase, without a full stop. */
  String value();
}
