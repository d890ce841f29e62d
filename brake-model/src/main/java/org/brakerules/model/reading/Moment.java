package org.brakerules.model.reading;

import java.util.Locale;

/**
 * When in the job a reading was taken. A stroke read after the adjuster was turned is no stroke as
 * found.
 */
public enum Moment {
  /** Before anything was pumped, turned or taken apart. */
  AS_FOUND,
  /** After the brake was worked on. */
  AFTER_WORK,
  /** Not stated. */
  UNKNOWN;

  /** The name of the moment in JSON, such as {@code as-found}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The name of the moment in a sentence. */
  public String inWords() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
