package org.brakerules.internal.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which new parts the end play is measured with before shims are chosen. */
class NewInStackTest {

  @ParameterizedTest
  @CsvSource({
    "camshaft, the new camshaft",
    "snap-ring/spline-end, the trial ring",
    "snap-ring/head-end, the new ring at the head end",
    "camshaft camshaft-bracket, the new camshaft and camshaft bracket",
    "camshaft snap-ring/spline-end, the trial ring and the new camshaft",
    "camshaft snap-ring/head-end, the new camshaft and ring at the head end",
    "snap-ring/spline-end spacer/spline-end camshaft head-washer,"
        + " 'the trial ring and the new camshaft, head washer and spacer'"
  })
  void a_trial_ring_stands_in_for_the_new_one(String replaced, String words) {
    assertThat(inStack(replaced).inWords()).contains(words);
  }

  @Test
  void a_bushing_has_no_width_in_the_stack() {
    assertThat(inStack("camshaft-bushing/head-end").inWords()).isEmpty();
  }

  private static NewInStack inStack(String replaced) {
    return new NewInStack(Stream.of(replaced.split(" ")).map(NewInStackTest::place).toList());
  }

  private static Place place(String part) {
    List<String> words = List.of(part.split("/"));
    Station station =
        words.size() == 1 ? Station.WHOLE_PART : Station.byId(words.get(1)).orElseThrow();
    PartKind kind = PartKind.byId(words.get(0)).orElseThrow();
    return new Place(WheelEndPath.of(2, Side.LEFT), kind, station, 1);
  }
}
