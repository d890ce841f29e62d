package org.brakerules.model.quantity;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One kind of quantity: its name and an example for messages, and its units.
 *
 * @param withFractions the units in which the trade writes fractions
 * @param <U> the units of this kind
 */
record Kind<U extends Unit<?>>(String name, String example, List<U> units, List<U> withFractions) {

  static final Kind<LengthUnit> LENGTH =
      new Kind<>("length", "0.030 in", List.of(LengthUnit.values()), List.of(LengthUnit.INCH));
  static final Kind<ForceUnit> FORCE =
      new Kind<>("force", "30 lbf", List.of(ForceUnit.values()), List.of());
  static final Kind<TorqueUnit> TORQUE =
      new Kind<>("torque", "15 lbf.ft", List.of(TorqueUnit.values()), List.of());
  static final Kind<PressureUnit> PRESSURE =
      new Kind<>("pressure", "90 psi", List.of(PressureUnit.values()), List.of());
  static final Kind<AngleUnit> ANGLE =
      new Kind<>("angle", "0.5 deg", List.of(AngleUnit.values()), List.of(AngleUnit.TURN));
  static final Kind<ShareUnit> SHARE =
      new Kind<>("share", "50 %", List.of(ShareUnit.values()), List.of());

  private static final List<Kind<?>> ALL = List.of(LENGTH, FORCE, TORQUE, PRESSURE, ANGLE, SHARE);

  /** For messages about a text that may be of any kind. */
  static final Kind<Unit<?>> ANY =
      new Kind<>(
          "quantity",
          "0.030 in",
          ALL.stream().<Unit<?>>flatMap(kind -> kind.units().stream()).toList(),
          ALL.stream().<Unit<?>>flatMap(kind -> kind.withFractions().stream()).toList());

  /** Each kind is there once. */
  @Override
  public boolean equals(@Nullable Object other) {
    return this == other;
  }

  @Override
  public int hashCode() {
    return name.hashCode();
  }

  /** The kind whose unit has this symbol. */
  static Optional<Kind<?>> ofSymbol(String symbol) {
    for (Kind<?> kind : ALL) {
      if (kind.unit(symbol).isPresent()) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }

  /** The unit of this kind with this symbol, upper and lower case as written. */
  Optional<U> unit(String symbol) {
    for (U unit : units) {
      if (unit.symbol().equals(symbol)) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }

  List<String> symbols() {
    return symbols(units);
  }

  List<String> symbolsWithFractions() {
    return symbols(withFractions);
  }

  private static List<String> symbols(List<? extends Unit<?>> units) {
    return units.stream().<String>map(Unit::symbol).toList();
  }

  /** The name with its article: "a length", "an angle". */
  String withArticle() {
    return (name.startsWith("a") ? "an " : "a ") + name;
  }

  /** What to write when the unit that was meant is not known. */
  String described() {
    return "%s with the unit %s, such as \"%s\""
        .formatted(withArticle(), alternatives(symbols()), example);
  }

  /** "a", "a or b", "a, b or c". */
  static String alternatives(List<String> choices) {
    int last = choices.size() - 1;
    return last == 0
        ? choices.get(0)
        : choices.stream().limit(last).collect(Collectors.joining(", "))
            + " or "
            + choices.get(last);
  }
}
