package org.brakerules.model.part;

import org.brakerules.model.reading.Station;

/** One grease seal or O-ring of the camshaft. */
@PartRecord
public record CamshaftSeal(
    Tag tag,
    @Means("the kind of seal") SealKind kind,
    @Means("the way the open side of the lip faces, of a two-lip seal its main lip")
        LipDirection lip,
    @Means("lip that does not face as the maker shows for this place") Sign lipUnlikeMakerShows,
    @Means("cut or torn lip") Sign cut,
    @Means("worn or hardened lip") Sign worn)
    implements Part {

  /** Refuses a tag of another kind of part. */
  public CamshaftSeal {
    tag.require(PartKind.CAMSHAFT_SEAL);
  }

  /** Starts a camshaft seal as it was found. */
  public static CamshaftSealBuilder asFound(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.asFound(wheelEnd.place(PartKind.CAMSHAFT_SEAL, station)));
  }

  /** Starts a new camshaft seal, fitted in this job. */
  public static CamshaftSealBuilder fittedNew(WheelEndPath wheelEnd, Station station) {
    return builder(Tag.fittedNew(wheelEnd.place(PartKind.CAMSHAFT_SEAL, station)));
  }

  /** Starts the camshaft seal that carries the tag. */
  public static CamshaftSealBuilder builder(Tag tag) {
    return CamshaftSealBuilder.builder(Blank.of(CamshaftSeal.class, tag));
  }
}
