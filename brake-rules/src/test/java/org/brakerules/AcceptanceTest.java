package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.job.Acceptance;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.CamshaftBushing;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How the uncertainty of a reading counts, by the choice of the shop. The limit is 0.020 in of TM
 * 5-4210-220-12, the uncertainty of a dial indicator 0.001 in from memory.
 */
class AcceptanceTest {

  private static final WheelEndPath LEFT = WheelEndPath.of(2, Side.LEFT);

  @ParameterizedTest(name = "{0}: play {1}, uncertainty stated {2}: {3}")
  @CsvSource({
    "SIMPLE,            0.0205 in, '',        REPLACE",
    "SIMPLE,            0.0205 in, 0.001 in,  REPLACE",
    "GUARDED_IF_STATED, 0.0205 in, '',        REPLACE",
    "GUARDED_IF_STATED, 0.0205 in, 0.001 in,  UNDECIDED",
    "GUARDED_IF_STATED, 0.0205 in, 0.0004 in, REPLACE",
    "GUARDED,           0.0205 in, '',        UNDECIDED",
    "GUARDED,           0.0210 in, '',        UNDECIDED",
    "GUARDED,           0.0211 in, '',        REPLACE",
    "GUARDED,           0.0205 in, 0.0004 in, REPLACE",
  })
  void a_reading_close_to_its_limit_proves_as_much_as_the_shop_lets_it(
      Acceptance acceptance, String play, String uncertainty, Disposition disposition) {
    assertThat(decision(acceptance, play, uncertainty).disposition()).isEqualTo(disposition);
  }

  @Test
  void a_reading_that_proves_nothing_asks_for_an_instrument_that_would() {
    assertThat(decision(Acceptance.GUARDED, "0.0195 in", "0.002 in").needed())
        .filteredOn(needed -> needed.point().equals("camshaft-bushing.radial-play"))
        .extracting(Needed::why)
        .singleElement()
        .asString()
        .contains("measured as 0.0195 in, too close to the limit for its uncertainty of 0.002 in")
        .contains("measure again with a finer instrument");
    assertThat(decision(Acceptance.GUARDED, "0.0185 in", "0.002 in").needed())
        .filteredOn(needed -> needed.point().equals("camshaft-bushing.radial-play"))
        .extracting(Needed::why)
        .singleElement()
        .asString()
        .endsWith(", such as a dial indicator or bore gauge");
  }

  private static Decision decision(Acceptance acceptance, String play, String uncertainty) {
    Reading<Length> alone =
        Reading.of(Length.parse(play), Station.HEAD_END, Method.DIAL_INDICATOR_LIFTED_BY_HAND);
    Reading<Length> reading =
        uncertainty.isEmpty() ? alone : alone.plusOrMinus(Length.parse(uncertainty));
    CamshaftBushing bushing =
        CamshaftBushing.asFound(LEFT, Station.HEAD_END).radialPlay(Measurement.of(reading)).build();
    BrakeJob job =
        BrakeJob.builder()
            .date(LocalDate.of(2026, 11, 20))
            .ruleSet("us-federal")
            .scope(Scope.SHOES_OFF)
            .acceptance(acceptance)
            .wheelEnd(LEFT, Layout.of(CamshaftLayout.TUBE).build(), bushing)
            .build();
    Place place = bushing.place();
    return BrakeRules.standard().decide(job).decisions().stream()
        .filter(one -> one.part().equals(place))
        .findFirst()
        .orElseThrow();
  }
}
