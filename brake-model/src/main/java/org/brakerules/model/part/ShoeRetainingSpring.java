package org.brakerules.model.part;

/** A spring that holds the shoes on their anchor pins. */
@PartRecord
public record ShoeRetainingSpring(
    Tag tag, @Means("spring found broken") Sign broken, @Means("spring found off") Sign off)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public ShoeRetainingSpring {
    tag.require(PartKind.SHOE_RETAINING_SPRING);
  }

  /** Starts a shoe retaining spring as it was found. */
  public static ShoeRetainingSpringBuilder asFound(WheelEndPath wheelEnd) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.SHOE_RETAINING_SPRING)));
  }

  /** Starts a new shoe retaining spring, fitted in this job. */
  public static ShoeRetainingSpringBuilder fittedNew(WheelEndPath wheelEnd) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.SHOE_RETAINING_SPRING)));
  }

  /** Starts the shoe retaining spring that carries the tag. */
  public static ShoeRetainingSpringBuilder builder(Tag tag) {
    return ShoeRetainingSpringBuilder.builder(Blank.of(ShoeRetainingSpring.class, tag));
  }
}
