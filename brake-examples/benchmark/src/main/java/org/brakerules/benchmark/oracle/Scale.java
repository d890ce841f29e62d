package org.brakerules.benchmark.oracle;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.Comparison;
import org.brakerules.model.job.Acceptance;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.quantity.Pressure;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;
import org.jspecify.annotations.Nullable;

/** Holds readings against one figure under the rule set and the acceptance of a job. */
final class Scale {

  private record Band(Pressure least, Pressure most) {
    static Band psi(String least, String most) {
      return new Band(Pressure.parse(least + " psi"), Pressure.parse(most + " psi"));
    }

    boolean contains(Pressure pressure) {
      return pressure.compareTo(least) >= 0 && pressure.compareTo(most) <= 0;
    }
  }

  /** The reservoir pressure at which a full application is read. */
  private static final Map<String, Band> TEST_PRESSURE =
      Map.of("us-federal", Band.psi("80", "90"), "quebec", Band.psi("90", "100"));

  /** Where no text that was read names one. */
  private static final Set<String> ANY_PRESSURE = Set.of("us-virginia");

  private final Acceptance acceptance;
  private final boolean anyPressure;
  private final @Nullable Band testPressure;

  Scale(BrakeJob job) {
    acceptance = job.acceptance();
    anyPressure = ANY_PRESSURE.contains(job.ruleSet().id());
    testPressure = TEST_PRESSURE.get(job.ruleSet().id());
  }

  /** How the readings of a part stand against a figure read as a row says. */
  @SuppressWarnings("unchecked") // figure and readings are of one kind of quantity
  <Q extends Quantity<Q>> OracleCheck hold(Limit limit, Figure row, Quantity<?> value, Facts part) {
    Measurement<Q> measurement = (Measurement<Q>) part.measurement(limit.property());
    return check(row, (Q) value, part, measurement.readings());
  }

  private <Q extends Quantity<Q>> OracleCheck check(
      Figure row, Q value, Facts part, List<Reading<Q>> readings) {
    if (readings.isEmpty()) {
      return check(row, value, CheckStatus.MISSING, null, null);
    }
    Reading<Q> worst = null;
    CheckStatus status = CheckStatus.WITHIN;
    Q margin = null;
    for (Reading<Q> taken : readings) {
      if (counts(row, part, taken)) {
        Reading<Q> reading = Trust.trusted(taken, acceptance);
        CheckStatus stands = stands(row.comparison(), reading, value);
        Q from = reading.value().minus(value).abs();
        if (margin == null || isGraver(stands, from, status, margin)) {
          worst = reading;
          status = stands;
          margin = from;
        }
      }
    }
    return worst == null
        ? check(
            row, value, CheckStatus.WRONG_METHOD, Trust.trusted(readings.get(0), acceptance), null)
        : check(row, value, status, worst, margin);
  }

  private static OracleCheck check(
      Figure row,
      Quantity<?> value,
      CheckStatus status,
      @Nullable Reading<?> reading,
      @Nullable Quantity<?> margin) {
    return new OracleCheck(
        row.id(),
        status,
        Optional.of(row.comparison()),
        Optional.of(value),
        Optional.ofNullable(reading),
        Optional.ofNullable(margin));
  }

  /** Of two beyond the farther one is graver, of others the nearer. */
  private static <Q extends Quantity<Q>> boolean isGraver(
      CheckStatus one, Q margin, CheckStatus other, Q otherMargin) {
    if (one != other) {
      return gravity(one) > gravity(other);
    }
    int order = margin.compareTo(otherMargin);
    return one == CheckStatus.BEYOND ? order > 0 : order < 0;
  }

  private static int gravity(CheckStatus status) {
    return switch (status) {
      case BEYOND -> 2;
      case UNPROVEN -> 1;
      default -> 0;
    };
  }

  /** A reading proves a side only if all it can mean is on that side. */
  private static <Q extends Quantity<Q>> CheckStatus stands(
      Comparison comparison, Reading<Q> reading, Q figure) {
    Q value = reading.value();
    Optional<Q> doubt = reading.uncertainty();
    boolean least = comparison.passes(doubt.isPresent() ? value.minus(doubt.get()) : value, figure);
    boolean most = comparison.passes(doubt.isPresent() ? value.plus(doubt.get()) : value, figure);
    if (least && most) {
      return CheckStatus.WITHIN;
    }
    return least || most ? CheckStatus.UNPROVEN : CheckStatus.BEYOND;
  }

  private boolean counts(Figure row, Facts part, Reading<?> reading) {
    return isAtStation(row, part.station(), reading.station())
        && (row.methods().isEmpty() || row.methods().contains(reading.method()))
        && (row.moment().isEmpty() || row.moment().get() == reading.moment())
        && (reading.method() != Method.FULL_APPLICATION || isInBand(reading.reservoirPressure()));
  }

  /** Of a part that has no stations any place will do, if the figure names none. */
  private static boolean isAtStation(Figure row, Station own, Station at) {
    return row.station().isPresent()
        ? row.station().get() == at
        : own == Station.WHOLE_PART || at == own;
  }

  private boolean isInBand(Optional<Pressure> pressure) {
    return anyPressure
        || (testPressure != null && pressure.isPresent() && testPressure.contains(pressure.get()));
  }
}
