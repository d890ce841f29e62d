package org.brakerules.model.part;

/** The spider on the axle flange. */
@PartRecord
public record Spider(
    Tag tag,
    @Means("loose spider") Sign loose,
    @Means("cracked spider") Sign cracked,
    @Means("bent spider") Sign bent,
    @Means("anchor bore in which a new pin or bushing is loose") Sign anchorBoreWorn,
    @Means("worn bore of the camshaft bushing") Sign bushingBoreWorn,
    @Means("worn bolt holes or flange") Sign boltHolesWorn,
    @Means("face of the spider out of square with the axle") Sign faceOutOfSquare)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public Spider {
    tag.require(PartKind.SPIDER);
  }

  /** Starts a spider as it was found. */
  public static SpiderBuilder asFound(WheelEndPath wheelEnd) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.SPIDER)));
  }

  /** Starts a new spider, fitted in this job. */
  public static SpiderBuilder fittedNew(WheelEndPath wheelEnd) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.SPIDER)));
  }

  /** Starts the spider that carries the tag. */
  public static SpiderBuilder builder(Tag tag) {
    return SpiderBuilder.builder(Blank.of(Spider.class, tag));
  }
}
