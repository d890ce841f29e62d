package org.brakerules.harness.report;

import java.util.List;
import picocli.CommandLine.Help.Ansi.IStyle;
import picocli.CommandLine.Help.Ansi.Style;

/**
 * The colours of a report, or none. A report reads the same without them.
 *
 * @param coloured whether colours are used
 */
public record Palette(boolean coloured) {

  /** What a piece of text is, from which its colour follows. */
  enum Ink {
    PLAIN,
    TITLE(Style.bold),
    STOP(Style.bold, Style.fg_red),
    REPLACE(Style.fg_red),
    OPEN(Style.fg_yellow),
    GOOD(Style.fg_green),
    QUIET(Style.faint);

    @SuppressWarnings("ImmutableEnumChecker") // an immutable list of constants
    private final List<IStyle> styles;

    Ink(IStyle... styles) {
      this.styles = List.of(styles);
    }
  }

  String paint(String text, Ink ink) {
    if (!coloured || ink.styles.isEmpty() || text.isEmpty()) {
      return text;
    }
    IStyle[] styles = ink.styles.toArray(IStyle[]::new);
    return Style.on(styles) + text + Style.off(styles);
  }
}
