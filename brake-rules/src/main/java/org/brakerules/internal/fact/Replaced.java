package org.brakerules.internal.fact;

import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.WheelEndPath;
import org.jspecify.annotations.Nullable;

/**
 * Some part of a kind is replaced at a wheel end: what consequences rest on.
 *
 * @param partKind the kind
 * @param wheelEnd the wheel end
 */
public record Replaced(PartKind partKind, WheelEndPath wheelEnd) {

  /** Written out, as is its hash: what Java makes for a record is put together at first use. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Replaced that
        && partKind == that.partKind
        && wheelEnd.equals(that.wheelEnd);
  }

  @Override
  public int hashCode() {
    return 31 * wheelEnd.hashCode() + partKind.hashCode();
  }

  /** The wheel end across the axle. */
  public WheelEndPath partner() {
    return wheelEnd.partner();
  }
}
