package org.brakerules.model.part;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The largest value a measurement can have on a real brake. A larger one is a slip of the pen.
 *
 * <p>This is no limit of the trade: it only stops 30 in where 0.030 in was meant.
 */
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface AtMost {
  /** The value with its unit, for example {@code 1 in}. */
  String value();
}
