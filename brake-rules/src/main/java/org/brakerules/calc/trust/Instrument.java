package org.brakerules.calc.trust;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.quantity.Share;
import org.brakerules.model.quantity.Torque;
import org.brakerules.model.reading.Method;

/**
 * A measuring instrument of the shop with the uncertainty its readings are taken to have where none
 * is stated.
 *
 * @param name the name, such as {@code feeler gauge}
 * @param methods the methods of reading that use it
 * @param uncertainty the expanded uncertainty, an amount or a share of the reading
 * @param standing how far that figure can be relied on
 */
public record Instrument(
    String name, List<Method> methods, Quantity<?> uncertainty, Standing standing) {

  /** Keeps its own copy of the methods. */
  public Instrument {
    methods = List.copyOf(methods);
  }

  /** All instruments of the table. */
  public static List<Instrument> all() {
    return InstrumentTable.INSTRUMENTS;
  }

  /** The instrument a method uses; empty for an eye and for a method that is not stated. */
  public static Optional<Instrument> of(Method method) {
    return all().stream().filter(one -> one.methods().contains(method)).findFirst();
  }

  /**
   * The instruments that would settle how a reading stands, the coarsest first as the table has
   * them.
   *
   * @param value the value that was read
   * @param margin how far it is from its limit
   * @param methods the methods the limit accepts
   */
  public static <Q extends Quantity<Q>> List<Instrument> settling(
      Q value, Q margin, Collection<Method> methods) {
    return all().stream()
        .filter(one -> one.methods().stream().anyMatch(methods::contains))
        .filter(
            one ->
                one.uncertaintyOf(value).filter(least -> least.compareTo(margin) < 0).isPresent())
        .toList();
  }

  /** The uncertainty of a reading; empty if the instrument does not read such a quantity. */
  @SuppressWarnings("unchecked") // the class of the quantity is compared before
  public <Q extends Quantity<Q>> Optional<Q> uncertaintyOf(Q value) {
    if (uncertainty instanceof Share share) {
      return value instanceof Torque torque
          ? Optional.of((Q) part(torque, share))
          : Optional.empty();
    }
    return uncertainty.getClass() == value.getClass()
        ? Optional.of((Q) uncertainty)
        : Optional.empty();
  }

  private static Torque part(Torque torque, Share share) {
    BigDecimal factor = share.percent().movePointLeft(2);
    return new Torque(torque.newtonMetres().multiply(factor), torque.unit());
  }
}
