package org.brakerules.model.part;

import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Measurement;

/** The spring brake section of a chamber. */
@PartRecord
public record SpringBrake(
    Tag tag,
    @Means("dent in the housing") Sign dent,
    @Means("housing rusted through") Sign rustThrough,
    @Means("bent clamp band or ears") Sign bentClamp,
    @Means("missing fastener or plug") Sign fastenerMissing,
    @Means("release bolt that will not seat or turn") Sign boltWillNotSeat,
    @Means("spring brake caged") Sign caged,
    @Means("spring brake that does not release fully") Sign notFullyReleased,
    @Means("exposed length of the release tool when caged") @AtMost("20 in")
        Measurement<Length> cagedLength)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public SpringBrake {
    tag.require(PartKind.SPRING_BRAKE);
  }

  /** Starts a spring brake as it was found. */
  public static SpringBrakeBuilder asFound(WheelEndPath wheelEnd) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.SPRING_BRAKE)));
  }

  /** Starts a new spring brake, fitted in this job. */
  public static SpringBrakeBuilder fittedNew(WheelEndPath wheelEnd) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.SPRING_BRAKE)));
  }

  /** Starts the spring brake that carries the tag. */
  public static SpringBrakeBuilder builder(Tag tag) {
    return SpringBrakeBuilder.builder(Blank.of(SpringBrake.class, tag));
  }
}
