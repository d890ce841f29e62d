package org.brakerules.internal.parts;

import java.math.BigInteger;
import org.brakerules.model.quantity.Length;

/** Pins and cotter pins are asked for by fractions of an inch. */
final class InchFraction {

  private static final long SIXTY_FOURTH = 396_875;
  private static final BigInteger PARTS = BigInteger.valueOf(64);

  private InchFraction() {}

  /** A length below an inch as a fraction over 64 at most; as it is if it is none. */
  static String of(Length length) {
    long nanometres = length.nanometres();
    if (nanometres % SIXTY_FOURTH != 0 || nanometres >= 64 * SIXTY_FOURTH) {
      return length.toString();
    }
    BigInteger parts = BigInteger.valueOf(nanometres / SIXTY_FOURTH);
    BigInteger common = parts.gcd(PARTS);
    return parts.divide(common) + "/" + PARTS.divide(common) + " in";
  }
}
