package org.brakerules.model.part;

import org.brakerules.model.reading.Station;
import org.jspecify.annotations.Nullable;

/**
 * Where a part sits in the job; its text form is the part's path, such as {@code
 * tractor/axle2/left/camshaft-seal/head-end/2}. Paths are a promise: they never change between
 * releases.
 *
 * @param wheelEnd the wheel end
 * @param kind the kind of part
 * @param station the station, {@link Station#WHOLE_PART} for a part the wheel end has once
 * @param number tells parts of one kind and station apart, from 1; a 1 is not written
 */
public record Place(WheelEndPath wheelEnd, PartKind kind, Station station, int number)
    implements Comparable<Place> {

  /** The largest number of parts of one kind and station. */
  public static final int MOST_OF_A_KIND = 20;

  /**
   * Checks the place.
   *
   * @throws IllegalArgumentException if the kind has no such station, or the number is not 1 to
   *     {@link PartKind#mostAtOnePlace()}
   */
  public Place {
    if (!kind.stations().contains(station)) {
      throw new IllegalArgumentException(
          "A " + kind.id() + " has no station " + station.id() + "; " + kind.stationsInWords());
    }
    if (number > 1 && kind.mostAtOnePlace() == 1) {
      throw new IllegalArgumentException(
          "A wheel end has one "
              + kind.inWords()
              + ", and no number "
              + number
              + "; state the one that is to go back, as found or new.");
    }
    if (number < 1 || number > MOST_OF_A_KIND) {
      throw new IllegalArgumentException(
          "Number "
              + number
              + " of "
              + kind.id()
              + " is out of range; count from 1 to "
              + MOST_OF_A_KIND
              + ".");
    }
  }

  /** The same place with another number. */
  public Place numbered(int other) {
    return new Place(wheelEnd, kind, station, other);
  }

  /** The part in a sentence, such as {@code camshaft bushing, head end}. */
  public String inWords() {
    StringBuilder words = new StringBuilder(kind.inWords());
    if (station != Station.WHOLE_PART) {
      words.append(", ").append(station.inWords());
    }
    if (number > 1) {
      words.append(", number ").append(number);
    }
    return words.toString();
  }

  /** Written out, as is its hash: what Java makes for a record is put together at first use. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Place that
        && kind == that.kind
        && station == that.station
        && number == that.number
        && wheelEnd.equals(that.wheelEnd);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * (31 * wheelEnd.hashCode() + kind.hashCode()) + station.hashCode()) + number;
  }

  @Override
  public int compareTo(Place other) {
    if (!wheelEnd.equals(other.wheelEnd)) {
      return wheelEnd.compareTo(other.wheelEnd);
    }
    if (kind != other.kind) {
      return kind.compareTo(other.kind);
    }
    return station == other.station
        ? Integer.compare(number, other.number)
        : station.compareTo(other.station);
  }

  /** The path of the part. */
  @Override
  public String toString() {
    StringBuilder path = new StringBuilder(wheelEnd.toString()).append('/').append(kind.id());
    if (station != Station.WHOLE_PART) {
      path.append('/').append(station.id());
    }
    if (number > 1) {
      path.append('/').append(number);
    }
    return path.toString();
  }
}
