package org.brakerules.model.decision;

import java.util.List;
import org.brakerules.model.part.Place;

/**
 * One step of what to look at or measure next over a whole wheel end. Its instrument, way and
 * limits stand in the {@link Needed} of the part's decision that has the same point.
 *
 * @param part the part to look at
 * @param point the id of the inspection point
 * @param bearsOn the undecided parts whose decision the answer can move, the part itself among them
 */
public record NextLook(Place part, String point, List<Place> bearsOn) {

  /** Keeps its own copy of the list. */
  public NextLook {
    bearsOn = List.copyOf(bearsOn);
  }
}
