package org.brakerules.internal.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.brakerules.internal.table.Selector.Fit;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.layout.ChamberFamily;
import org.brakerules.model.layout.ChamberSize;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.layout.StrokeClass;
import org.brakerules.model.part.CamshaftSeal;
import org.brakerules.model.part.Chamber;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.SealKind;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Station;
import org.jspecify.annotations.Nullable;
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
          "part.kind=o-ring|unknown"                     | TUBE    | UNKNOWN | UNKNOWN
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

  @ParameterizedTest
  @CsvSource(
      delimiter = '#',
      textBlock =
          """
          layout.chamber.family=clamp                  # clamp   # 30 # 2.5 in  # YES
          layout.chamber.family=clamp                  # bolt    # 30 # 2.5 in  # NO
          layout.chamber.family=clamp                  # unknown # 30 # 2.5 in  # UNKNOWN
          layout.chamber.type=30                       # clamp   # 30 # 2.5 in  # YES
          layout.chamber.type=30                       # clamp   # 3  # 2.5 in  # NO
          layout.chamber.type=24|30                    # clamp   # 30 # 2.5 in  # YES
          layout.chamber.type=30                       # clamp   #    # 2.5 in  # UNKNOWN
          layout.chamber.ratedStroke=2.5 in            # clamp   # 30 # 2.5 in  # YES
          layout.chamber.ratedStroke=2.5 in            # clamp   # 30 # 2 1/2 in # YES
          layout.chamber.ratedStroke=2.5 in            # clamp   # 30 # 63.5 mm # YES
          layout.chamber.ratedStroke=2.5 in            # clamp   # 30 # 64 mm   # NO
          layout.chamber.ratedStroke=2.5 in            # clamp   # 30 #         # UNKNOWN
          layout.chamber.ratedStroke=2.25 in|2.5 in    # clamp   # 30 # 2.25 in # YES
          layout.chamber.ratedStroke=not 3 in          # clamp   # 30 # 2.5 in  # YES
          layout.chamber.ratedStroke=not 3 in          # clamp   # 30 # 3 in    # NO
          layout.chamber.ratedStroke=not 3 in          # clamp   # 30 # 76.2 mm # NO
          layout.chamber.ratedStroke=not 3 in          # clamp   # 30 #         # UNKNOWN
          layout.chamber.ratedStroke=not 2.5 in|3 in   # clamp   # 30 # 3 in    # NO
          layout.chamber.family=not clamp|bolt         # bolt    # 30 # 3 in    # NO
          layout.chamber.family=not clamp|bolt         # rotochamber # 30 # 3 in # YES
          layout.chamber.family=clamp; layout.chamber.type=not 30 # clamp # 30 # 3 in # NO
          layout.chamber.family=bolt; layout.chamber.ratedStroke=3 in # clamp # 30 #  # NO
          layout.drumDiameter=16.5 in                  # clamp   # 30 # 2.5 in  # YES
          layout.drumDiameter=15 in                    # clamp   # 30 # 2.5 in  # NO
          otherwise                                    # bolt    # 7  #         # YES
          """)
  void a_row_fits_by_chamber_and_drum(
      String selector, String family, @Nullable String type, @Nullable String rated, Fit expected) {
    Layout layout =
        Layout.of(CamshaftLayout.TUBE)
            .drumDiameter(Optional.of(Length.parse("16.5 in")))
            .chamber(
                new ChamberSize(
                    ChamberFamily.valueOf(family.toUpperCase(Locale.ROOT)),
                    type == null ? "" : type,
                    StrokeClass.LONG,
                    Optional.ofNullable(rated).map(Length::parse),
                    ""))
            .build();
    Subject chamber =
        new Subject(Optional.empty(), AxleKind.DRIVE, layout, Chamber.asFound(LEFT).build());
    assertThat(TableTexts.selector(selector, PartKind.CHAMBER).fit(chamber)).isEqualTo(expected);
  }

  @Test
  void the_row_for_the_rest_is_known_as_such() {
    assertThat(TableTexts.selector("otherwise", PartKind.CHAMBER).isOtherwise()).isTrue();
    assertThat(TableTexts.selector("", PartKind.CHAMBER).isOtherwise()).isFalse();
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
          layout.chamber=30      # "chamber" is no property of a layout
          layout.chamber.typ=30  # "typ" is no property of a chamber; did you mean "type"?
          layout.chamber.family=clampp # "clampp" is no value of layout.chamber.family
          layout.drumDiameter=16.5 # "16.5" is no value of layout.drumDiameter; write a value with its unit
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
        Optional.empty(),
        AxleKind.DRIVE,
        Layout.of(camshaft).build(),
        CamshaftSeal.asFound(LEFT, Station.HEAD_END).kind(kind).build());
  }
}
