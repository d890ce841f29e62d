package org.brakerules.model.quantity;

/** Reads a quantity whose kind is known only when the program runs, as in a table of limits. */
public final class Quantities {

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
    return parse(kind, text);
  }

  private static Quantity<?> parse(Kind<?> kind, String text) {
    if (kind.equals(Kind.LENGTH)) {
      return Length.parse(text);
    } else if (kind.equals(Kind.FORCE)) {
      return Force.parse(text);
    } else if (kind.equals(Kind.TORQUE)) {
      return Torque.parse(text);
    } else if (kind.equals(Kind.PRESSURE)) {
      return Pressure.parse(text);
    } else if (kind.equals(Kind.ANGLE)) {
      return Angle.parse(text);
    }
    return kind.equals(Kind.SHARE) ? Share.parse(text) : refuse(text);
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
    return type.cast(parse(kind(type), text));
  }

  private static Kind<?> kind(Class<?> type) {
    if (type == Length.class) {
      return Kind.LENGTH;
    } else if (type == Force.class) {
      return Kind.FORCE;
    } else if (type == Torque.class) {
      return Kind.TORQUE;
    } else if (type == Pressure.class) {
      return Kind.PRESSURE;
    } else if (type == Angle.class) {
      return Kind.ANGLE;
    } else if (type == Share.class) {
      return Kind.SHARE;
    }
    throw new IllegalArgumentException(
        type.getName() + " is not one kind of quantity. Give one, such as Length.class.");
  }
}
