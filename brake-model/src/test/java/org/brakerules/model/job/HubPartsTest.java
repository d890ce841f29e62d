package org.brakerules.model.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.brakerules.model.json.JobReader;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An outboard drum comes off without the hub; what is found can lead to the hub all the same. */
class HubPartsTest {

  private static final List<PartKind> OF_HUB =
      List.of(PartKind.HUB, PartKind.WHEEL_SEAL, PartKind.WHEEL_BEARING);

  @ParameterizedTest(name = "{0}, {1}: {2} parts of the hub")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          drum-off | { "part": "lining", "station": "upper", "oilSoaked": "seen" }         | 2
          wheel-on | { "part": "lining", "station": "upper", "oilSoaked": "seen" }         | 0
          drum-off | { "part": "lining", "station": "upper", "oilSoaked": "not-seen" }     | 0
          drum-off | { "part": "lining", "station": "upper", "greaseSoaked": "seen" }      | 0
          drum-off | { "part": "lining", "station": "upper", "presence": "not-fitted", \
          "oilSoaked": "seen" }                                                            | 0
          drum-off | { "part": "hub", "disturbance": "disturbed" }                         | 4
          drum-off | { "part": "hub", "disturbance": "left-alone" }                        | 0
          """)
  void what_is_stated_of_the_wheel_end_leads_to_the_hub(String scope, String part, int expected) {
    assertThat(expected(scope, "outboard", part)).hasSize(expected);
  }

  @ParameterizedTest
  @CsvSource({"drum-off, 4", "wheel-on, 0"})
  void an_inboard_drum_takes_the_hub_with_it(String scope, int expected) {
    String soaked = "{ \"part\": \"lining\", \"station\": \"upper\", \"oilSoaked\": \"seen\" }";
    assertThat(expected(scope, "inboard", soaked)).hasSize(expected).doesNotHaveDuplicates();
  }

  private static List<Place> expected(String scope, String drumMount, String part) {
    String written =
        """
        { "date": "2026-11-20", "ruleSet": "us-federal", "scope": "%s",
          "units": [ { "axles": [ { "axle": 2, "wheelEnds": [
            { "side": "left", "layout": { "drumMount": "%s" }, "parts": [ %s ] } ] } ] } ] }
        """
            .formatted(scope, drumMount, part);
    BrakeJob job = JobReader.read(written);
    return job.wheelEnds()
        .flatMap(end -> end.expectedParts(job.scope()).stream())
        .filter(place -> OF_HUB.contains(place.kind()))
        .toList();
  }
}
