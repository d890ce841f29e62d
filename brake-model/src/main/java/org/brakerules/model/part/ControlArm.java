package org.brakerules.model.part;

/** The control arm of an automatic adjuster, with its bracket. */
@PartRecord
public record ControlArm(
    Tag tag,
    @Means("cracked arm or bracket") Sign cracked,
    @Means("bent arm or bracket") Sign bent,
    @Means("loose arm or bracket") Sign loose,
    @Means("worn arm or bracket") Sign worn,
    @Means("mark out of its window") Sign markOutOfWindow)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public ControlArm {
    tag.require(PartKind.CONTROL_ARM);
  }

  /** Starts a control arm as it was found. */
  public static ControlArmBuilder asFound(WheelEndPath wheelEnd) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.CONTROL_ARM)));
  }

  /** Starts a new control arm, fitted in this job. */
  public static ControlArmBuilder fittedNew(WheelEndPath wheelEnd) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.CONTROL_ARM)));
  }

  /** Starts the control arm that carries the tag. */
  public static ControlArmBuilder builder(Tag tag) {
    return ControlArmBuilder.builder(Blank.of(ControlArm.class, tag));
  }
}
