package org.brakerules.internal.finalcheck;

import org.brakerules.model.part.Camshaft;
import org.brakerules.model.part.CamshaftBushing;
import org.brakerules.model.part.Chamber;
import org.brakerules.model.part.Hub;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Tag;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Measurement;

/**
 * A part of the finished brake with what was read of it, to hold the reading against its limits.
 */
final class FinishedPart {

  private FinishedPart() {}

  /**
   * The part with one measurement.
   *
   * @param property the property that was measured
   * @throws IllegalStateException if no final check reads this property
   */
  static Part of(Tag tag, String property, Measurement<Length> reading) {
    return switch (tag.place().kind().id() + "." + property) {
      case "camshaft.endPlay" -> Camshaft.builder(tag).endPlay(reading).build();
      case "camshaft-bushing.radialPlay" ->
          CamshaftBushing.builder(tag).radialPlay(reading).build();
      case "hub.endPlay" -> Hub.builder(tag).endPlay(reading).build();
      case "chamber.freeStroke" -> Chamber.builder(tag).freeStroke(reading).build();
      case "chamber.appliedStroke" -> Chamber.builder(tag).appliedStroke(reading).build();
      default ->
          throw new IllegalStateException(
              "No final check reads " + property + " of " + tag.place());
    };
  }
}
