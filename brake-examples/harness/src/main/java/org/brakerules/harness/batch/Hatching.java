package org.brakerules.harness.batch;

import org.brakerules.harness.html.Markup;
import org.brakerules.model.decision.Disposition;

/** What fills the piece of a bar, so that dispositions are told apart without colours. */
final class Hatching {

  private static final String THIN = "0.8";

  private Hatching() {}

  /** Puts the fillings into a drawing, before anything is filled with them. */
  static void define(Markup out) {
    out.open("defs");
    begin(out, "dots", 6);
    out.empty("circle", "cx", "3", "cy", "3", "r", "0.9");
    end(out);
    begin(out, "stripes", 7);
    stroke(out, "M 0 7 L 7 0 M -1 1 L 1 -1 M 6 8 L 8 6");
    end(out);
    begin(out, "net", 5);
    stroke(out, "M 0 0 L 5 5 M 0 5 L 5 0");
    end(out);
    out.closeTo("defs");
  }

  /** The filling of a disposition: the darker, the worse. */
  static String of(Disposition disposition) {
    return switch (disposition) {
      case REUSE -> "white";
      case CLEAN -> "url(#dots)";
      case ADJUST -> "url(#stripes)";
      case UNDECIDED -> "url(#net)";
      case REPLACE -> "black";
    };
  }

  private static void begin(Markup out, String id, int size) {
    String length = Integer.toString(size);
    out.open(
        "pattern", "id", id, "width", length, "height", length, "patternUnits", "userSpaceOnUse");
    out.empty("rect", "width", length, "height", length, "fill", "white");
  }

  private static void stroke(Markup out, String path) {
    out.empty("path", "d", path, "stroke", "black", "stroke-width", THIN);
  }

  private static void end(Markup out) {
    out.closeTo("pattern");
  }
}
