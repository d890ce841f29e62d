package org.brakerules.model.part;

/** The spring that pulls both shoes back to the cam. */
@PartRecord
public record ReturnSpring(
    Tag tag,
    @Means("broken spring") Sign broken,
    @Means("coils stretched or ends opened") Sign stretched,
    @Means("spring not of the type its maker lists") Sign wrongType)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public ReturnSpring {
    tag.require(PartKind.RETURN_SPRING);
  }

  /** Starts a return spring as it was found. */
  public static ReturnSpringBuilder asFound(WheelEndPath wheelEnd) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.RETURN_SPRING)));
  }

  /** Starts a new return spring, fitted in this job. */
  public static ReturnSpringBuilder fittedNew(WheelEndPath wheelEnd) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.RETURN_SPRING)));
  }

  /** Starts the return spring that carries the tag. */
  public static ReturnSpringBuilder builder(Tag tag) {
    return ReturnSpringBuilder.builder(Blank.of(ReturnSpring.class, tag));
  }
}
