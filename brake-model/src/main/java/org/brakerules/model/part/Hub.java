package org.brakerules.model.part;

import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Measurement;

/** The hub. */
@PartRecord
public record Hub(
    Tag tag,
    @Means("blocked hub vent") Sign ventBlocked,
    @Means("hub filled over its level") Sign overfilled,
    @Means("leaking hub cap or axle flange gasket") Sign gasketLeak,
    @Means("wheel bearing loose as found") Sign looseAsFound,
    @Means("how the bearings are set") BearingSetting bearings,
    @Means("end play of the hub on its bearings") @AtMost("0.5 in") Measurement<Length> endPlay)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public Hub {
    tag.require(PartKind.HUB);
  }

  /** Starts a hub as it was found. */
  public static HubBuilder asFound(WheelEndPath wheelEnd) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.HUB)));
  }

  /** Starts a new hub, fitted in this job. */
  public static HubBuilder fittedNew(WheelEndPath wheelEnd) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.HUB)));
  }

  /** Starts the hub that carries the tag. */
  public static HubBuilder builder(Tag tag) {
    return HubBuilder.builder(Blank.of(Hub.class, tag));
  }
}
