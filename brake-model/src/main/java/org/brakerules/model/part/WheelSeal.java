package org.brakerules.model.part;

/** The oil or grease seal of the hub. */
@PartRecord
public record WheelSeal(
    Tag tag,
    @Means("leaking seal") Sign leaking,
    @Means("grooved seat") Sign seatGrooved,
    @Means("seal driven in cocked") Sign cocked)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public WheelSeal {
    tag.require(PartKind.WHEEL_SEAL);
  }

  /** Starts a wheel seal as it was found. */
  public static WheelSealBuilder asFound(WheelEndPath wheelEnd) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.WHEEL_SEAL)));
  }

  /** Starts a new wheel seal, fitted in this job. */
  public static WheelSealBuilder fittedNew(WheelEndPath wheelEnd) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.WHEEL_SEAL)));
  }

  /** Starts the wheel seal that carries the tag. */
  public static WheelSealBuilder builder(Tag tag) {
    return WheelSealBuilder.builder(Blank.of(WheelSeal.class, tag));
  }
}
