package org.brakerules.benchmark.oracle;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.brakerules.model.decision.Comparison;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.quantity.Pressure;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;

/** A figure with the value that holds for one part, against which its readings are held. */
record Bound(Figure figure, Quantity<?> value) {

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

  Held hold(BrakeJob job, Facts part) {
    return readings(part)
        .filter(reading -> counts(job, part, reading))
        .map(this::hold)
        .reduce(Held::worse)
        .orElse(Held.OPEN);
  }

  private Stream<Reading<?>> readings(Facts part) {
    return part.measurement(figure.property()).orElseThrow().readings().stream().map(one -> one);
  }

  private boolean counts(BrakeJob job, Facts part, Reading<?> reading) {
    return isAtStation(part.part().station(), reading.station())
        && (figure.methods().isEmpty() || figure.methods().contains(reading.method()))
        && figure.moment().map(reading.moment()::equals).orElse(true)
        && (reading.method() != Method.FULL_APPLICATION
            || isInBand(job, reading.reservoirPressure()));
  }

  /** Of a part that has no stations any place will do, if the figure names none. */
  private boolean isAtStation(Station own, Station at) {
    return figure.station().map(at::equals).orElse(own == Station.WHOLE_PART || at == own);
  }

  private static boolean isInBand(BrakeJob job, Optional<Pressure> pressure) {
    if (ANY_PRESSURE.contains(job.ruleSet().id())) {
      return true;
    }
    Band band = TEST_PRESSURE.get(job.ruleSet().id());
    return band != null && pressure.filter(band::contains).isPresent();
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // value and readings are of one kind of quantity
  private Held hold(Reading<?> reading) {
    Reading typed = reading;
    return held(typed, (Quantity) value);
  }

  private <Q extends Quantity<Q>> Held held(Reading<Q> reading, Q limit) {
    Comparison comparison = figure.comparison();
    List<Q> sides =
        reading
            .uncertainty()
            .map(doubt -> List.of(reading.value().minus(doubt), reading.value().plus(doubt)))
            .orElse(List.of(reading.value()));
    if (sides.stream().allMatch(side -> comparison.passes(side, limit))) {
      return Held.WITHIN;
    }
    return sides.stream().noneMatch(side -> comparison.passes(side, limit))
        ? Held.BEYOND
        : Held.OPEN;
  }
}
