package org.brakerules.model.quantity;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Other spellings of the units, as people write them. They serve only to tell what to write
 * instead: one unit has one symbol.
 */
final class Spelling {

  private static final Map<String, List<String>> OTHER_SPELLINGS =
      Map.ofEntries(
          Map.entry("in", List.of("in", "ins", "inch", "inches", "\"", "''")),
          Map.entry(
              "mm", List.of("mm", "mms", "millimetre", "millimetres", "millimeter", "millimeters")),
          Map.entry("lbf", List.of("lbf", "lbsf", "lb", "lbs", "pound", "pounds")),
          Map.entry("N", List.of("n", "newton", "newtons")),
          Map.entry("kN", List.of("kn", "kilonewton", "kilonewtons")),
          Map.entry("lbf.in", List.of("lbfin", "inlbf", "lbin", "lbsin", "inlb", "inlbs")),
          Map.entry("lbf.ft", List.of("lbfft", "ftlbf", "lbft", "lbsft", "ftlb", "ftlbs")),
          Map.entry("N.m", List.of("nm", "newtonmetre", "newtonmetres", "newtonmeters")),
          Map.entry("psi", List.of("psi", "psig", "lbf/in2")),
          Map.entry("kPa", List.of("kpa", "kilopascal", "kilopascals")),
          Map.entry("bar", List.of("bar", "bars")),
          Map.entry("deg", List.of("deg", "degs", "degree", "degrees", "°")),
          Map.entry("turn", List.of("turn", "turns", "rev", "revs", "revolution", "revolutions")),
          Map.entry("%", List.of("%", "percent", "pct")));

  private static final Map<String, String> SYMBOLS = symbolsBySpelling();

  private Spelling() {}

  /** The symbol of the unit meant by a spelling, without regard to case, dots and dashes. */
  static Optional<String> symbolMeantBy(String written) {
    return Optional.ofNullable(SYMBOLS.get(plain(written)));
  }

  private static String plain(String written) {
    return written.toLowerCase(Locale.ROOT).replaceAll("[-_ .·*]", "");
  }

  private static Map<String, String> symbolsBySpelling() {
    Map<String, String> symbols = new HashMap<>();
    OTHER_SPELLINGS.forEach(
        (symbol, spellings) -> spellings.forEach(spelling -> symbols.put(spelling, symbol)));
    return Map.copyOf(symbols);
  }
}
