package org.brakerules.model.decision;

import org.brakerules.model.layout.AxleMatter;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.reading.Contradiction;
import org.jspecify.annotations.Nullable;

/** What a reason rests on. */
public sealed interface Evidence {

  /**
   * Something stated of a part: a sign that was seen, or an attribute.
   *
   * @param part the part
   * @param property the property, such as {@code crack}
   * @param value what was stated, such as {@code seen}
   */
  record Stated(Place part, String property, String value) implements Evidence {

    /** Written out, as is its hash: what Java makes for a record is put together at first use. */
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Stated that
          && part.equals(that.part)
          && property.equals(that.property)
          && value.equals(that.value);
    }

    @Override
    public int hashCode() {
      return 31 * (31 * part.hashCode() + property.hashCode()) + value.hashCode();
    }
  }

  /**
   * Something stated of the layout of the brake.
   *
   * @param wheelEnd the wheel end
   * @param property the property, such as {@code camshaftHand}
   * @param value what was stated, such as {@code right}
   */
  record Built(WheelEndPath wheelEnd, String property, String value) implements Evidence {

    /** Written out, as is its hash: what Java makes for a record is put together at first use. */
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Built that
          && wheelEnd.equals(that.wheelEnd)
          && property.equals(that.property)
          && value.equals(that.value);
    }

    @Override
    public int hashCode() {
      return 31 * (31 * wheelEnd.hashCode() + property.hashCode()) + value.hashCode();
    }
  }

  /**
   * A reading against its limit.
   *
   * @param check the reading and the limit
   */
  record Measured(Check check) implements Evidence {

    /** Written out, as is its hash: what Java makes for a record is put together at first use. */
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Measured that && check.equals(that.check);
    }

    @Override
    public int hashCode() {
      return check.hashCode();
    }
  }

  /**
   * Another part of the wheel end that is replaced.
   *
   * @param wheelEnd the wheel end
   * @param kind the kind of part
   */
  record AlsoReplaced(WheelEndPath wheelEnd, PartKind kind) implements Evidence {}

  /**
   * A part that was removed or separated from its mate in this job.
   *
   * @param part the part
   */
  record WasDisturbed(Place part) implements Evidence {}

  /**
   * The two ends of the axle differ in something that must be alike.
   *
   * @param wheelEnd the wheel end
   * @param matter in what they differ
   */
  record UnlikePartner(WheelEndPath wheelEnd, AxleMatter matter) implements Evidence {}

  /**
   * Two readings that cannot both be right.
   *
   * @param part the part they speak of
   * @param contradiction what they say that cannot be
   * @param reading the one, as it was written down
   * @param otherReading the other, as it was written down
   */
  record ReadingsContradict(
      Place part, Contradiction contradiction, String reading, String otherReading)
      implements Evidence {}
}
