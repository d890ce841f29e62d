package org.brakerules.harness;

import org.brakerules.harness.report.Palette;
import picocli.CommandLine.Help.Ansi;

/** When colours are used. */
enum ColourChoice {
  /** Only where a person looks at a terminal and has not set NO_COLOR. */
  AUTO,
  ALWAYS,
  NEVER;

  Palette palette() {
    return new Palette(this == ALWAYS || (this == AUTO && Ansi.AUTO.enabled()));
  }
}
