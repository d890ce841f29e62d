package org.brakerules.model.quantity;

import java.util.Map;
import java.util.function.Function;

/** Reads a quantity whose kind is known only when the program runs, as in a table of limits. */
public final class Quantities {

  private static final Map<Class<?>, Function<String, Quantity<?>>> PARSERS =
      Map.of(
          Length.class, Length::parse,
          Force.class, Force::parse,
          Torque.class, Torque::parse,
          Pressure.class, Pressure::parse,
          Angle.class, Angle::parse,
          Share.class, Share::parse);

  private static final Map<Kind<?>, Function<String, Quantity<?>>> PARSERS_BY_KIND =
      Map.of(
          Kind.LENGTH, Length::parse,
          Kind.FORCE, Force::parse,
          Kind.TORQUE, Torque::parse,
          Kind.PRESSURE, Pressure::parse,
          Kind.ANGLE, Angle::parse,
          Kind.SHARE, Share::parse);

  private Quantities() {}

  /**
   * Reads a text such as {@code 0.030 in} as a quantity of the kind its unit belongs to.
   *
   * @throws QuantityFormatException if the text is no quantity
   */
  public static Quantity<?> parse(String text) {
    String symbol = WrittenQuantity.split(text, Kind.ANY).symbol();
    Kind<?> kind =
        Kind.ofSymbol(symbol)
            .or(() -> Spelling.symbolMeantBy(symbol).flatMap(Kind::ofSymbol))
            .orElse(Kind.ANY);
    return PARSERS_BY_KIND.getOrDefault(kind, Quantities::refuse).apply(text);
  }

  private static Quantity<?> refuse(String text) {
    NumberAndUnit<?> read = NumberAndUnit.read(text, Kind.ANY);
    throw new AssertionError("A text of no kind has no unit of a kind, but had " + read.unit());
  }

  /**
   * Reads a text such as {@code 0.030 in} as a quantity of one kind.
   *
   * @param type the kind, for example {@code Length.class}
   * @throws QuantityFormatException if the text is not such a quantity
   * @throws IllegalArgumentException if the type is {@link Quantity} itself
   */
  public static <Q extends Quantity<Q>> Q parse(Class<Q> type, String text) {
    Function<String, Quantity<?>> parser = PARSERS.get(type);
    if (parser == null) {
      throw new IllegalArgumentException(
          type.getName() + " is not one kind of quantity. Give one, such as Length.class.");
    }
    return type.cast(parser.apply(text));
  }
}
