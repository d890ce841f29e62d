package org.brakerules.parts;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.brakerules.model.decision.RuleBaseVersion;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.part.Place;

/**
 * The parts list of a job.
 *
 * @param ruleBase the rule base that decided
 * @param reference the shop's own name for the job; may be empty
 * @param date the day of the inspection
 * @param ruleSet the rules that hold on the road
 * @param wheelEnds every wheel end of the job and, where only one end of an axle is in the job, its
 *     partner, in path order
 * @param axles each axle, both ends together
 * @param vehicle all axles together
 */
public record PartsList(
    RuleBaseVersion ruleBase,
    String reference,
    LocalDate date,
    RuleSet ruleSet,
    List<WheelEndParts> wheelEnds,
    List<AxleParts> axles,
    List<TotalLine> vehicle) {

  /** Keeps its own copies of the lists. */
  public PartsList {
    wheelEnds = List.copyOf(wheelEnds);
    axles = List.copyOf(axles);
    vehicle = List.copyOf(vehicle);
  }

  /**
   * Where new parts are used once, and come off for the work if they are fitted already. Beside
   * them stand parts of the same lines that are replaced anyway.
   */
  public Set<Place> comingOffAgain() {
    return own(
        line -> line.grounds().stream().anyMatch(one -> one.kind() == Ground.Kind.USED_ONCE));
  }

  /** Parts that are new for the sake of another part, whatever was decided on them. */
  public Set<Place> renewedBesideAnother() {
    return own(PartsLine::isRenewedBesideAnother);
  }

  /** Parts that come with another new part as one unit, and are not bought apart. */
  public Set<Place> comingAsOneUnit() {
    return own(line -> line.handling() == Handling.ORDER && line.comesWith().isPresent());
  }

  private Set<Place> own(Predicate<PartsLine> which) {
    return wheelEnds.stream()
        .flatMap(end -> end.lines().stream())
        .filter(which)
        .flatMap(PartsLine::own)
        .collect(Collectors.toUnmodifiableSet());
  }

  /** The ends of axles that are not in the job and that the work on the other end reaches. */
  public List<OtherEnd> otherEnds() {
    return wheelEnds.stream().flatMap(end -> end.otherEnd().stream()).toList();
  }
}
