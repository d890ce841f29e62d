package org.brakerules.model.quantity;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.brakerules.model.text.NearestName;

/**
 * A text split where its number ends, and the words for refusing it.
 *
 * @param found the whole text, its blanks evened out
 */
record WrittenQuantity<U extends Unit<?>>(
    String found, Kind<U> kind, String number, String symbol) {

  private static final int LONGEST = 60;
  private static final Pattern PLAIN_NUMBER = Pattern.compile("-?[0-9]{1,6}(?:\\.[0-9]{1,6})?");
  private static final Pattern BLANKS = Pattern.compile("[\\s\\p{Z}]+");
  private static final Pattern NUMBER_THEN_SYMBOL =
      Pattern.compile("([-+.,/0-9 ]*)(.*)", Pattern.DOTALL);

  static <U extends Unit<?>> WrittenQuantity<U> split(String text, Kind<U> kind) {
    if (text.length() > LONGEST) {
      throw new QuantityFormatException(
          text, kind, "it is longer than " + LONGEST + " characters", kind.described());
    }
    String found = BLANKS.matcher(text).replaceAll(" ").strip();
    Matcher parts = NUMBER_THEN_SYMBOL.matcher(found);
    if (!parts.matches()) {
      throw new AssertionError("Every text has a number part and a symbol part, maybe empty");
    }
    return new WrittenQuantity<>(found, kind, parts.group(1).strip(), parts.group(2));
  }

  /** True if no mistake is possible, as in nearly all texts; the others are searched for one. */
  boolean isPlain() {
    return PLAIN_NUMBER.matcher(number).matches() && kind.unit(symbol).isPresent();
  }

  QuantityFormatException refused(String wrong, String expected) {
    return new QuantityFormatException(found, kind, wrong, expected);
  }

  /** A better number with the unit that was meant, or with each unit when that is not clear. */
  String rewritten(String betterNumber) {
    List<String> symbols =
        symbolMeant()
            .map(List::of)
            .orElseGet(
                () -> betterNumber.contains("/") ? kind.symbolsWithFractions() : kind.symbols());
    return symbols.isEmpty()
        ? kind.described()
        : Kind.alternatives(
            symbols.stream().map(each -> "\"" + betterNumber + " " + each + "\"").toList());
  }

  /** The unit, refused if it is missing, unknown or a unit of another kind. */
  U unit() {
    return kind.unit(symbol).orElseThrow(this::refusedUnit);
  }

  private QuantityFormatException refusedUnit() {
    if (symbol.isEmpty()) {
      return refused("the unit is missing", rewritten(number));
    }
    if (symbolMeant().isPresent()) {
      return refused("the unit \"" + symbol + "\" is not known", rewritten(number));
    }
    Optional<Kind<?>> otherKind = Kind.ofSymbol(symbol);
    if (otherKind.isPresent()) {
      return refused(symbol + " is a unit of " + otherKind.get().name(), kind.described());
    }
    // The nearest symbol may be a unit of another size (MPa, kPa), so the number is not repeated.
    String nearest =
        NearestName.of(symbol, kind.symbols())
            .map(near -> ", the nearest is \"" + near + "\"")
            .orElse("");
    return refused("the unit \"" + symbol + "\" is not known" + nearest, kind.described());
  }

  private Optional<String> symbolMeant() {
    return Spelling.symbolMeantBy(symbol).filter(kind.symbols()::contains);
  }
}
