package org.brakerules.linter.internal.language;

/** The constants of the rule base's type of that name, which is compiled after the linter. */
enum AxleMatter {
  CHAMBER_SIZE,
  STROKE_CLASS,
  ADJUSTER_KIND,
  ARM_LENGTH
}
