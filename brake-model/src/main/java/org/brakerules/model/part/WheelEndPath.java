package org.brakerules.model.part;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.brakerules.model.reading.Station;
import org.jspecify.annotations.Nullable;

/**
 * The name of one wheel end in a job, such as {@code tractor/axle2/left}.
 *
 * @param unit the unit of the combination, lower-case letters, digits and hyphens; empty where a
 *     job has one unit only and does not name it
 * @param axle the axle counted from the front of its unit, from 1
 * @param side the side, seen by the driver
 */
public record WheelEndPath(String unit, int axle, Side side) implements Comparable<WheelEndPath> {

  /** The largest number of an axle. */
  public static final int MOST_AXLES = 99;

  private static final Pattern TEXT =
      Pattern.compile("(?:([a-z][a-z0-9-]*)/)?axle([1-9][0-9]?)/(left|right)");
  private static final Pattern UNIT = Pattern.compile("|[a-z][a-z0-9-]{0,39}");

  /**
   * Checks the parts of the name.
   *
   * @throws IllegalArgumentException if the unit has other characters or the axle is not 1 to 99
   */
  public WheelEndPath {
    if (!UNIT.matcher(unit).matches()) {
      throw new IllegalArgumentException(
          "The unit \""
              + unit
              + "\" is no name; write lower-case letters, digits and hyphens,"
              + " such as tractor or trailer-1.");
    }
    if (axle < 1 || axle > MOST_AXLES) {
      throw new IllegalArgumentException(
          "Axle "
              + axle
              + " is out of range; axles are counted from the front, from 1 to "
              + MOST_AXLES
              + ".");
    }
  }

  /** Written out, as is its hash: what Java makes for a record is put together at first use. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof WheelEndPath that
        && axle == that.axle
        && side == that.side
        && unit.equals(that.unit);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * unit.hashCode() + axle) + side.hashCode();
  }

  /** Names a wheel end of a vehicle that has one unit only. */
  public static WheelEndPath of(int axle, Side side) {
    return new WheelEndPath("", axle, side);
  }

  /** Names a wheel end of one unit of a combination. */
  public static WheelEndPath of(String unit, int axle, Side side) {
    return new WheelEndPath(unit, axle, side);
  }

  /**
   * Reads the text form.
   *
   * @throws IllegalArgumentException if the text is not of the form {@code unit/axle2/left}
   */
  public static WheelEndPath parse(String text) {
    Matcher matcher = TEXT.matcher(text);
    if (!matcher.matches()) {
      throw new IllegalArgumentException(
          "\"" + text + "\" names no wheel end; write for example tractor/axle2/left.");
    }
    String unit = matcher.group(1) == null ? "" : matcher.group(1);
    return new WheelEndPath(
        unit,
        Integer.parseInt(matcher.group(2)),
        Side.valueOf(matcher.group(3).toUpperCase(Locale.ROOT)));
  }

  /** The place of a part that this wheel end has once. */
  public Place place(PartKind kind) {
    return new Place(this, kind, Station.WHOLE_PART, 1);
  }

  /** The place of a part that this wheel end has at more than one station. */
  public Place place(PartKind kind, Station station) {
    return new Place(this, kind, station, 1);
  }

  /** The wheel end across the axle. */
  public WheelEndPath partner() {
    return new WheelEndPath(unit, axle, side == Side.LEFT ? Side.RIGHT : Side.LEFT);
  }

  @Override
  public int compareTo(WheelEndPath other) {
    if (!unit.equals(other.unit)) {
      return unit.compareTo(other.unit);
    }
    return axle == other.axle ? side.compareTo(other.side) : Integer.compare(axle, other.axle);
  }

  /** The text form, such as {@code tractor/axle2/left}. */
  @Override
  public String toString() {
    String end = "axle" + axle + "/" + side.name().toLowerCase(Locale.ROOT);
    return unit.isEmpty() ? end : unit + "/" + end;
  }
}
