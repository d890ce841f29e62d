package org.brakerules.benchmark.oracle;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.job.MakersLimit;
import org.brakerules.model.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** Holds the readings of the parts of a job against the figures in force. */
final class Measure {

  private final BrakeJob job;
  private final Scale scale;
  private final IdentityHashMap<Limit, List<Figure>> inForce = new IdentityHashMap<>();

  Measure(BrakeJob job) {
    this.job = job;
    this.scale = new Scale(job);
  }

  /** Every limit of the part's kind, with how its readings stand. */
  List<Held> hold(Facts part) {
    List<Limit> limits = Trade.limits(part.kind());
    if (limits.isEmpty()) {
      return List.of();
    }
    List<Held> all = new ArrayList<>(limits.size());
    for (Limit limit : limits) {
      hold(limit, part, all);
    }
    all.removeIf(one -> isOfAnotherRuleSet(one, all));
    return all;
  }

  /** Where one limit of a property is in force, one of another rule set is no question. */
  private boolean isOfAnotherRuleSet(Held held, List<Held> all) {
    if (held.hasFigure() || !figures(held.limit()).isEmpty()) {
      return false;
    }
    for (Held other : all) {
      if (other.hasFigure() && other.limit().property() == held.limit().property()) {
        return true;
      }
    }
    return false;
  }

  /** Against the maker's figure where there is one, and the law's which no maker can displace. */
  private void hold(Limit limit, Facts part, List<Held> into) {
    Fitting fitting = Fitting.of(figures(limit), job, part);
    Figure row = fitting.row();
    MakersLimit makers = makers(limit, part);
    int before = into.size();
    if (row != null && (makers == null || row.isLawOf(job))) {
      Optional<? extends Quantity<?>> value = row.value(part.end());
      if (value.isPresent()) {
        into.add(new Held(limit, scale.hold(limit, row, value.get(), part), fitting.hangs()));
      }
    }
    if (makers != null) {
      into.add(
          new Held(
              limit, scale.hold(limit, likely(limit, row), makers.value(), part), fitting.hangs()));
    }
    if (into.size() == before || (makers != null && fitting.isLawOpen())) {
      into.add(Held.withoutFigure(limit, part, fitting.hangs()));
    }
  }

  /** The rows that hold on the day under the rule set. */
  private List<Figure> figures(Limit limit) {
    return inForce.computeIfAbsent(limit, this::inForce);
  }

  private List<Figure> inForce(Limit limit) {
    List<Figure> rows = new ArrayList<>(limit.rows().size());
    for (Figure row : limit.rows()) {
      if (row.holds().holds(job)) {
        rows.add(row);
      }
    }
    return rows;
  }

  /** The row that says where and how a reading is taken for a maker's figure. */
  private Figure likely(Limit limit, @Nullable Figure fitting) {
    if (fitting != null) {
      return fitting;
    }
    List<Figure> ofDay = figures(limit);
    return ofDay.isEmpty() ? limit.rows().get(0) : ofDay.get(0);
  }

  /** The narrowest path wins, of equal ones the later. */
  private @Nullable MakersLimit makers(Limit limit, Facts part) {
    MakersLimit narrowest = null;
    for (MakersLimit one : job.makersLimits()) {
      if (one.limit().equals(limit.id())
          && one.covers(part.place().toString())
          && (narrowest == null || one.on().length() >= narrowest.on().length())) {
        narrowest = one;
      }
    }
    return narrowest;
  }
}
