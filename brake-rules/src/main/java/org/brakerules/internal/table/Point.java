package org.brakerules.internal.table;

import java.util.Optional;
import org.brakerules.model.decision.Needed.Task;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Scope;
import org.brakerules.model.reading.Station;

/**
 * One row of a table of inspection points: something a decision needs to know of a part.
 *
 * @param id the id, such as {@code camshaft-bushing.radial-play}
 * @param part the kind of part
 * @param property the property, of the part or of what {@code owner} says
 * @param owner what has the property
 * @param at where the reading is taken; empty if at the part's own station
 * @param from the scope from which on it is needed
 * @param selector the parts it is for
 * @param demand when it is needed
 * @param brake whether the brake is applied for it
 * @param finds what a sign that is seen means
 * @param instrument what to look or measure with
 * @param how how to do it, with the direction
 */
public record Point(
    String id,
    PartKind part,
    Property property,
    Owner owner,
    Optional<Station> at,
    Scope from,
    Selector selector,
    Demand demand,
    Brake brake,
    Finds finds,
    String instrument,
    String how) {

  /** What a point looks at. */
  public enum Owner {
    /** The part itself. */
    PART,
    /** The layout of the brake. */
    LAYOUT,
    /** The vehicle. */
    VEHICLE
  }

  /** When a point is needed. */
  public enum Demand {
    /** For every decision on the part. */
    ALWAYS,
    /** Only where a limit for it is in force. */
    WITH_LIMIT,
    /** Only when a rule asks for it. */
    ON_DEMAND
  }

  /** Whether the brake is applied for a look. */
  public enum Brake {
    /** It is not. */
    AT_REST,
    /** The linings are brought against the drum, with air or by hand. */
    APPLIED
  }

  /** What a sign that is seen means. */
  public enum Finds {
    /** Something wrong. */
    FAULT,
    /** Something good, such as a roller that turns after cleaning. */
    GOOD,
    /** Neither: a measurement or a state. */
    FACT
  }

  /** Whether the part itself has the property. */
  public boolean ofPart() {
    return owner == Owner.PART;
  }

  /** Whether the brake is applied for it, which needs the drum on and nobody's work on hold. */
  public boolean appliesBrake() {
    return brake == Brake.APPLIED;
  }

  /** What is known of it: a sign, a state, a measurement or an optional statement. */
  public Object valueOf(Subject subject) {
    return switch (owner) {
      case PART -> property.valueOf(subject.part());
      case LAYOUT -> property.valueOf(subject.layout());
      case VEHICLE -> subject.builtOn();
    };
  }

  /** What there is to do. */
  public Task task() {
    if (property.isMeasurement()) {
      return Task.MEASURE;
    }
    return property.isSign() ? Task.LOOK : Task.STATE;
  }
}
