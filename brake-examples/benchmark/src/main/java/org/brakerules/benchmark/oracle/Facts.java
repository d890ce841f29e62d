package org.brakerules.benchmark.oracle;

import java.util.List;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Sign;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Station;

/** What the job says of one part, read once; properties go by their numbers in {@link Knowable}. */
final class Facts {

  private final WheelEndView end;
  private final Part part;
  private final PartKind kind;
  private final Station station;
  private final boolean asFound;
  private final boolean missing;
  private final boolean mentioned;
  private final Object[] values;
  private final Findings findings = new Findings();
  private final Renewal renewal;
  private long seen;
  private long notSeen;
  private long unknown;
  private List<Held> held = List.of();
  private long beyond;

  /**
   * Reads a part.
   *
   * @param mentioned whether the job mentions it; if not, the brake has it for certain
   */
  Facts(WheelEndView end, Part part, boolean missing, boolean mentioned) {
    this.end = end;
    this.part = part;
    this.kind = part.partKind();
    this.station = part.station();
    this.asFound = part.condition() == Condition.AS_FOUND;
    this.renewal = end.renewal(kind);
    this.missing = missing;
    this.mentioned = mentioned;
    Knowable knowable = Knowable.of(kind);
    values = new Object[knowable.ofPart()];
    for (int number = 0; number < values.length; number++) {
      values[number] = knowable.read(part, number);
      note(values[number], 1L << number);
    }
    unknown |= end.unstated() << values.length;
  }

  private void note(Object value, long bit) {
    if (value == Sign.SEEN) {
      seen |= bit;
    } else if (value == Sign.NOT_SEEN) {
      notSeen |= bit;
    } else if (value instanceof Measurement<?> measurement) {
      unknown |= measurement.taken() ? 0 : bit;
    } else if (value instanceof Enum<?> && BrakeState.isUnstated(value)) {
      unknown |= bit;
    }
  }

  /** How its readings stand, once they are held against the limits. */
  void hold(List<Held> against) {
    held = against;
    for (Held one : against) {
      beyond |= one.isBeyond() ? 1L << one.limit().number() : 0;
    }
  }

  WheelEndView end() {
    return end;
  }

  Part part() {
    return part;
  }

  Place place() {
    return part.place();
  }

  PartKind kind() {
    return kind;
  }

  Station station() {
    return station;
  }

  boolean missing() {
    return missing;
  }

  boolean mentioned() {
    return mentioned;
  }

  boolean asFound() {
    return asFound;
  }

  /** The signs that were seen. */
  long seen() {
    return seen;
  }

  /** The signs that were looked for and not seen. */
  long notSeen() {
    return notSeen;
  }

  /** What nobody looked at, measured or stated. */
  long unknown() {
    return unknown;
  }

  /** The limits, by their numbers, that a reading is beyond. */
  long beyond() {
    return beyond;
  }

  List<Held> held() {
    return held;
  }

  Findings findings() {
    return findings;
  }

  /** What is known of the replacement of its kind at its wheel end. */
  Renewal renewal() {
    return renewal;
  }

  Object value(int number) {
    return values[number];
  }

  Measurement<?> measurement(int number) {
    return (Measurement<?>) values[number];
  }

  /** Whether another part is of the same kind and station; the numbers do not count. */
  boolean isAtPlaceOf(Facts other) {
    return station == other.station;
  }
}
