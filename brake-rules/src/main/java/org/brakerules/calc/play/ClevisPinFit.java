package org.brakerules.calc.play;

import java.util.Optional;
import org.brakerules.calc.Basis;
import org.brakerules.calc.Working;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.quantity.Length;

/**
 * How a clevis pin fits its hole. Play belongs to both of them: only the diameters of both tell
 * which one is worn.
 *
 * @param size the nominal size of the pin
 * @param clearance what hole and pin leave; empty unless both were measured
 * @param pinWear how much thinner the pin is than the thinnest new one, zero if it is not; empty
 *     unless it was measured
 * @param holeWear how much wider the hole is than the widest new one, zero if it is not; empty
 *     unless both sizes are known
 * @param working how it was worked out
 */
public record ClevisPinFit(
    ClevisPinSize size,
    Optional<Length> clearance,
    Optional<Length> pinWear,
    Optional<Length> holeWear,
    Working working) {

  /**
   * Works out what the diameters tell.
   *
   * @param size the nominal size of the pin
   * @param pin the diameter of the shank where it is thinnest; empty if not measured
   * @param hole the diameter of the hole where it is widest; empty if not measured
   * @param widestNewHole the widest a new hole is, by its maker; empty if not known
   * @throws IllegalArgumentException if the pin is thicker than the hole is wide
   */
  public static ClevisPinFit of(
      ClevisPinSize size,
      Optional<Length> pin,
      Optional<Length> hole,
      Optional<Length> widestNewHole) {
    Optional<Length> clearance = pin.flatMap(shank -> hole.map(bore -> clearance(shank, bore)));
    Optional<Length> pinWear = pin.map(shank -> excess(size.thinnest(), shank));
    Optional<Length> holeWear =
        hole.flatMap(bore -> widestNewHole.map(widest -> excess(bore, widest)));
    return new ClevisPinFit(
        size,
        clearance,
        pinWear,
        holeWear,
        working(size, pin, hole, widestNewHole, clearance, pinWear, holeWear));
  }

  /** The clearance of a new pin in a hole: the least, with the thickest pin in the narrowest. */
  public static Length leastNewClearance(ClevisPinSize size, Length narrowestNewHole) {
    return narrowestNewHole.minus(size.thickest());
  }

  /** The clearance of a new pin in a hole: the most, with the thinnest pin in the widest. */
  public static Length mostNewClearance(ClevisPinSize size, Length widestNewHole) {
    return widestNewHole.minus(size.thinnest());
  }

  private static Length clearance(Length pin, Length hole) {
    if (pin.compareTo(hole) > 0) {
      throw new IllegalArgumentException(
          "A pin of " + pin + " does not go into a hole of " + hole + "; measure both again.");
    }
    return hole.minus(pin);
  }

  private static Length excess(Length larger, Length smaller) {
    Length excess = larger.minus(smaller);
    return excess.isNegative() ? larger.minus(larger) : excess;
  }

  private static Working working(
      ClevisPinSize size,
      Optional<Length> pin,
      Optional<Length> hole,
      Optional<Length> widestNewHole,
      Optional<Length> clearance,
      Optional<Length> pinWear,
      Optional<Length> holeWear) {
    Working working =
        start()
            .titled(" of " + size.nominal())
            .given("new pin", size.thinnest() + " to " + size.thickest())
            .given("its cotter pin", size.cotter());
    working = given(working, "pin", pin, "diameter of the pin");
    working = given(working, "hole", hole, "diameter of the hole");
    working = given(working, "widest new hole", widestNewHole, "widest new hole, by its maker");
    working = result(working, "clearance", clearance);
    working = result(working, "wear of the pin", pinWear);
    working = result(working, "wear of the hole", holeWear);
    return result(
        working,
        "most clearance when both are new",
        widestNewHole.map(widest -> mostNewClearance(size, widest)));
  }

  /** The work without a result, where something must be known first. */
  public static Working missing(String what) {
    return start().missing(what);
  }

  /** The work of a pin that is thicker than the hole it sits in. */
  public static Working contradicted(Length pin, Length hole) {
    return start().contradicted("pin", pin, "hole", hole);
  }

  private static Working start() {
    return Working.of(
        "clevis-pin.fit",
        "Fit of a clevis pin",
        "clearance = hole - pin; wear of the pin = thinnest new pin - pin; wear of the hole"
            + " = hole - widest new hole",
        Basis.exact(Standing.STANDARD, "ASME B18.8.1, shank of a new pin"));
  }

  private static Working given(
      Working working, String name, Optional<Length> value, String missing) {
    return value.isPresent() ? working.given(name, value.get()) : working.missing(missing);
  }

  private static Working result(Working working, String name, Optional<Length> value) {
    return value.isPresent() ? working.result(name, value.get()) : working;
  }
}
