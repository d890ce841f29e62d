package org.brakerules.model.part;

/**
 * What carries the camshaft inboard of the spider: the chamber bracket's tube, or the support
 * bracket.
 */
@PartRecord
public record CamshaftBracket(
    Tag tag,
    @Means("crack in the tube or bracket") Sign cracked,
    @Means("bent tube or bracket") Sign bent,
    @Means("tube or bracket rusted through") Sign rustedThrough,
    @Means("loose tube or bracket") Sign loose,
    @Means("worn seal bore") Sign sealBoreWorn,
    @Means("worn bushing bore") Sign bushingBoreWorn)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public CamshaftBracket {
    tag.require(PartKind.CAMSHAFT_BRACKET);
  }

  /** Starts a camshaft bracket as it was found. */
  public static CamshaftBracketBuilder asFound(WheelEndPath wheelEnd) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.CAMSHAFT_BRACKET)));
  }

  /** Starts a new camshaft bracket, fitted in this job. */
  public static CamshaftBracketBuilder fittedNew(WheelEndPath wheelEnd) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.CAMSHAFT_BRACKET)));
  }

  /** Starts the camshaft bracket that carries the tag. */
  public static CamshaftBracketBuilder builder(Tag tag) {
    return CamshaftBracketBuilder.builder(Blank.of(CamshaftBracket.class, tag));
  }
}
