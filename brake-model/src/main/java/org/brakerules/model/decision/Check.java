package org.brakerules.model.decision;

import java.util.Locale;
import java.util.Optional;
import org.brakerules.model.part.Place;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Reading;
import org.jspecify.annotations.Nullable;

/**
 * One reading held against one limit.
 *
 * @param part the part
 * @param property the property of the part that was read, such as {@code radialPlay}
 * @param limitId the id of the limit
 * @param status how the reading stands
 * @param limit the limit in force; empty if none is known
 * @param reading the reading that decided: the worst of those the limit accepts, or the one it does
 *     not accept; where no limit is known the first that was taken; empty if none was
 * @param margin how far inside the limit the reading is, or how far beyond, never negative; empty
 *     if there is nothing to compare
 */
public record Check(
    Place part,
    String property,
    String limitId,
    CheckStatus status,
    Optional<LimitInForce> limit,
    Optional<Reading<?>> reading,
    Optional<Quantity<?>> margin) {

  /** Written out, as is its hash: what Java makes for a record is put together at first use. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Check that
        && part.equals(that.part)
        && property.equals(that.property)
        && limitId.equals(that.limitId)
        && status == that.status
        && limit.equals(that.limit)
        && reading.equals(that.reading)
        && margin.equals(that.margin);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * part.hashCode() + limitId.hashCode()) + property.hashCode();
  }

  /** The property in words, such as {@code radial play}. */
  public String propertyInWords() {
    return property.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
  }
}
