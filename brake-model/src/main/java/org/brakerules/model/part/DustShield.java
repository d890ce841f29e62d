package org.brakerules.model.part;

/** The dust shield behind the shoes. */
@PartRecord
public record DustShield(
    Tag tag,
    @Means("bent shield") Sign bent,
    @Means("shield touching the drum") Sign touching,
    @Means("loose shield") Sign loose,
    @Means("missing plugs") Sign plugsMissing)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public DustShield {
    tag.require(PartKind.DUST_SHIELD);
  }

  /** Starts a dust shield as it was found. */
  public static DustShieldBuilder asFound(WheelEndPath wheelEnd) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.DUST_SHIELD)));
  }

  /** Starts a new dust shield, fitted in this job. */
  public static DustShieldBuilder fittedNew(WheelEndPath wheelEnd) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.DUST_SHIELD)));
  }

  /** Starts the dust shield that carries the tag. */
  public static DustShieldBuilder builder(Tag tag) {
    return DustShieldBuilder.builder(Blank.of(DustShield.class, tag));
  }
}
