package org.brakerules.model.part;

/**
 * The tag tied to a part on the bench: what every part has, whatever its kind.
 *
 * @param place where the part belongs
 * @param presence whether it is there
 * @param condition whether it is the part that was found or a new one
 * @param disturbance whether it was removed or separated from its mate in this job
 */
public record Tag(Place place, Presence presence, Condition condition, Disturbance disturbance) {

  /** Tags a part that was on the vehicle. */
  public static Tag asFound(Place place) {
    return new Tag(place, Presence.FITTED, Condition.AS_FOUND, Disturbance.BY_SCOPE);
  }

  /** Tags a new part. */
  public static Tag fittedNew(Place place) {
    return new Tag(place, Presence.FITTED, Condition.NEW, Disturbance.BY_SCOPE);
  }

  /** Tags the empty place of a part that the brake should have. */
  public static Tag missing(Place place) {
    return new Tag(place, Presence.MISSING, Condition.AS_FOUND, Disturbance.BY_SCOPE);
  }

  /** Tags the place of a part that this brake does not have. */
  public static Tag notFitted(Place place) {
    return new Tag(place, Presence.NOT_FITTED, Condition.AS_FOUND, Disturbance.BY_SCOPE);
  }

  /** The same tag with the scope overruled. */
  public Tag with(Disturbance other) {
    return new Tag(place, presence, condition, other);
  }

  /** Whether the part was disturbed in a job of this scope. */
  public boolean disturbed(Scope scope) {
    return switch (disturbance) {
      case DISTURBED -> true;
      case LEFT_ALONE -> false;
      case BY_SCOPE -> place.kind().disturbedFrom().map(scope::reaches).orElse(false);
    };
  }

  void require(PartKind kind) {
    if (place.kind() != kind) {
      throw new IllegalArgumentException(
          "The tag of " + place + " is tied to a " + kind.id() + "; tie it to its own part.");
    }
  }
}
