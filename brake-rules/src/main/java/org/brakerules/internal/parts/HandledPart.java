package org.brakerules.internal.parts;

import java.util.ArrayList;
import java.util.List;
import org.brakerules.parts.Ground;
import org.brakerules.parts.Handling;

/**
 * What is done with one part, and why.
 *
 * @param quantity the pieces it is
 * @param handling what is done with it
 * @param grounds why, the gravest first
 */
record HandledPart(Quantity quantity, Handling handling, List<Ground> grounds) {

  private static final String AGAIN =
      "new; where it is fitted already it comes off for this work, and another new one goes in";

  HandledPart {
    grounds = List.copyOf(grounds);
  }

  /** The same part handled in another way; the new ground is all that counts. */
  HandledPart instead(Handling other, Ground ground) {
    return new HandledPart(quantity, other, List.of(ground));
  }

  /** Another new one is needed unless this one lies at hand; nobody but the bench can tell. */
  HandledPart again(Ground ground) {
    return new HandledPart(quantity.toCount(AGAIN), Handling.ORDER, List.of(ground));
  }

  /** The same part with one more ground for what is done. */
  HandledPart also(Ground ground) {
    List<Ground> more = new ArrayList<>(grounds);
    more.add(ground);
    return new HandledPart(quantity, handling, more);
  }
}
