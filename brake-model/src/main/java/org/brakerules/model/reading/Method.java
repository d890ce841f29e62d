package org.brakerules.model.reading;

import java.util.Locale;
import java.util.Optional;

/**
 * How a reading was taken. A limit names the methods it was set for; a reading taken another way is
 * no reading of that limit.
 */
public enum Method {
  /** Dial indicator on the part, moved along its axis or turned by hand. */
  DIAL_INDICATOR,
  /** Dial indicator on the shaft, the shaft lifted and lowered by hand. */
  DIAL_INDICATOR_LIFTED_BY_HAND,
  /** Dial indicator on the shaft, the shaft pried with a bar, which bends the bracket as well. */
  DIAL_INDICATOR_PRIED,
  /** Bore of the bushing less diameter of the journal. */
  BORE_LESS_JOURNAL,
  FEELER_GAUGE,
  CALIPER,
  MICROMETER,
  BORE_GAUGE,
  DRUM_GAUGE,
  DEPTH_GAUGE,
  STEEL_RULE,
  PROTRACTOR,
  TORQUE_WRENCH,
  /** Push rod pulled or pried by hand until the linings meet the drum, brakes released. */
  PRIED_BY_HAND,
  /** Brake fully applied, engine off, spring brakes released; applied less released position. */
  FULL_APPLICATION,
  /** Spring brake released and applied again. */
  SPRING_BRAKE_REAPPLIED,
  /** Guessed by eye. */
  BY_EYE,
  /** Not stated. */
  UNKNOWN;

  /** The name of the method in JSON, such as {@code dial-indicator-lifted-by-hand}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The name of the method in a sentence. */
  public String inWords() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** Finds a method by its id. */
  public static Optional<Method> byId(String id) {
    for (Method method : values()) {
      if (method.id().equals(id)) {
        return Optional.of(method);
      }
    }
    return Optional.empty();
  }
}
