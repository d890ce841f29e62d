package org.brakerules.internal.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.brakerules.internal.table.Selector.Fit;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.CamshaftSeal;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.SealKind;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which parts a row is for. */
class SelectorTest {

  private static final WheelEndPath LEFT = WheelEndPath.of(2, Side.LEFT);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          ""                                             | TUBE    | ONE_LIP | YES
          layout.camshaft=tube                           | TUBE    | ONE_LIP | YES
          layout.camshaft=tube                           | SPLIT   | ONE_LIP | NO
          layout.camshaft=tube                           | UNKNOWN | ONE_LIP | UNKNOWN
          "layout.camshaft=tube|split"                   | SPLIT   | ONE_LIP | YES
          "layout.camshaft=tube|split"                   | CLOSED  | ONE_LIP | NO
          part.condition=as-found                        | TUBE    | ONE_LIP | YES
          part.condition=new                             | TUBE    | ONE_LIP | NO
          part.station=head-end                          | TUBE    | ONE_LIP | YES
          part.station=spline-end                        | TUBE    | ONE_LIP | NO
          part.presence=fitted                           | TUBE    | ONE_LIP | YES
          part.kind=o-ring                               | TUBE    | O_RING  | YES
          part.kind=o-ring                               | TUBE    | ONE_LIP | NO
          part.kind=o-ring                               | TUBE    | UNKNOWN | UNKNOWN
          "part.kind=o-ring|unknown"                     | TUBE    | UNKNOWN | YES
          axle.kind=drive                                | TUBE    | ONE_LIP | YES
          axle.kind=steer                                | TUBE    | ONE_LIP | NO
          layout.camshaft=tube; part.kind=o-ring         | TUBE    | O_RING  | YES
          layout.camshaft=tube; part.kind=o-ring         | SPLIT   | UNKNOWN | NO
          layout.camshaft=tube; part.kind=o-ring         | UNKNOWN | ONE_LIP | NO
          layout.camshaft=tube; part.kind=o-ring         | UNKNOWN | O_RING  | UNKNOWN
          """)
  void a_row_fits_by_what_is_stated(
      String selector, CamshaftLayout camshaft, SealKind kind, Fit expected) {
    assertThat(TableTexts.selector(selector, PartKind.CAMSHAFT_SEAL).fit(seal(camshaft, kind)))
        .isEqualTo(expected);
  }

  @Test
  void what_is_not_stated_is_named() {
    Selector selector =
        TableTexts.selector("layout.camshaft=tube; part.kind=o-ring", PartKind.CAMSHAFT_SEAL);
    assertThat(selector.unstated(seal(CamshaftLayout.UNKNOWN, SealKind.UNKNOWN)))
        .isEqualTo(List.of("layout.camshaft", "part.kind"));
    assertThat(selector.unstated(seal(CamshaftLayout.SPLIT, SealKind.UNKNOWN)))
        .isEqualTo(List.of("part.kind"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '#',
      textBlock =
          """
          layout.camshaft        # "layout.camshaft" selects nothing
          layout.camshaft=tub    # "tub" is no value of layout.camshaft; write tube, split
          layout.camshft=tube    # "camshft" is no property of a layout; did you mean "camshaft"?
          camshaft=tube          # "camshaft" is no attribute
          part.kinds=o-ring      # "kinds" is no sign or state of a camshaft seal; did you mean "kind"?
          part.condition=broken  # "broken" is no value of part.condition; write as-found, new
          """)
  void a_selector_with_a_slip_is_refused_with_what_to_write(String selector, String message) {
    assertThatThrownBy(() -> TableTexts.selector(selector, PartKind.CAMSHAFT_SEAL))
        .isInstanceOf(RuleBaseException.class)
        .hasMessageStartingWith("invented.csv line 2: ")
        .hasMessageContaining(message);
  }

  private static Subject seal(CamshaftLayout camshaft, SealKind kind) {
    return new Subject(
        AxleKind.DRIVE,
        Layout.of(camshaft).build(),
        CamshaftSeal.asFound(LEFT, Station.HEAD_END).kind(kind).build());
  }
}
