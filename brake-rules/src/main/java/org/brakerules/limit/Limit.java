package org.brakerules.limit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.brakerules.model.decision.Comparison;
import org.brakerules.model.decision.Source;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Station;

/**
 * One row of a limit table.
 *
 * @param id the id, such as {@code camshaft-bushing.radial-play.max}; rows for other dates, rule
 *     sets or configurations share it
 * @param part the kind of part it is for
 * @param property the property it limits, such as {@code radialPlay}
 * @param comparison the side on which a reading passes
 * @param value the value; empty if no default is known, so that only a maker's limit counts, and if
 *     it is a share of the rated stroke of each chamber
 * @param written the value as the table writes it, such as {@code 0.020 in} or {@code 80 % of
 *     layout.chamber.ratedStroke}; empty if no default is known
 * @param station where the reading must be taken; empty if at the part's own station
 * @param methods the methods it accepts; empty if any
 * @param moment when in the job the reading must be taken; empty if at any time
 * @param appliesTo the configurations it is for, as the table writes them; empty if all
 * @param ruleSet the rule set it belongs to; empty if it holds in every one but those of {@code
 *     exceptUnder}
 * @param exceptUnder the rule sets that hold it on another side, each in a row of its own
 * @param from the first day it holds; empty if it always did
 * @param to the last day it holds; empty if it still does
 * @param source where the value comes from
 * @param note what else a reader should know; may be empty
 */
public record Limit(
    String id,
    PartKind part,
    String property,
    Comparison comparison,
    Optional<Quantity<?>> value,
    String written,
    Optional<Station> station,
    List<Method> methods,
    Optional<Moment> moment,
    String appliesTo,
    Optional<RuleSet> ruleSet,
    List<RuleSet> exceptUnder,
    Optional<LocalDate> from,
    Optional<LocalDate> to,
    Source source,
    String note) {

  /** Keeps its own copies of the lists. */
  public Limit {
    methods = List.copyOf(methods);
    exceptUnder = List.copyOf(exceptUnder);
  }

  /** On which side of what a reading passes, such as {@code at most 0.020 in}. */
  public String inWords() {
    return comparison.inWords() + " " + (written.isEmpty() ? "the maker's figure" : written);
  }

  /** The same limit, which does not hold under these rule sets. */
  public Limit exceptUnder(List<RuleSet> others) {
    return new Limit(
        id,
        part,
        property,
        comparison,
        value,
        written,
        station,
        methods,
        moment,
        appliesTo,
        ruleSet,
        others,
        from,
        to,
        source,
        note);
  }

  /**
   * The same figure as one rule set holds it.
   *
   * @param under the rule set, under which alone it holds
   * @param side on which side of the figure a reading passes there
   * @param says where the rule set says so
   * @param remark what else a reader should know; may be empty
   */
  public Limit heldAs(RuleSet under, Comparison side, Source says, String remark) {
    return new Limit(
        id,
        part,
        property,
        side,
        value,
        written,
        station,
        methods,
        moment,
        appliesTo,
        Optional.of(under),
        List.of(),
        from,
        to,
        says,
        remark);
  }

  /** Whether it holds on a day under a rule set. */
  public boolean holds(LocalDate date, RuleSet jobs) {
    return ruleSet.map(jobs::equals).orElse(!exceptUnder.contains(jobs))
        && from.map(first -> !date.isBefore(first)).orElse(true)
        && to.map(last -> !date.isAfter(last)).orElse(true);
  }
}
