package org.brakerules.internal.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.layout.ChamberFamily;
import org.brakerules.model.layout.ChamberSize;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.layout.StrokeClass;
import org.brakerules.model.part.Chamber;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The value of a row for a brake, and what must be stated before it is known. Rows invented. */
class LimitRowTest {

  private static final String START = "chamber.applied-stroke.max,chamber,appliedStroke,at most,";
  private static final String PLAIN = START + "2 in,,,,layout.chamber.type=30,,,,COMMON-PRACTICE,";
  private static final String SHARE =
      START + "80 % of layout.chamber.ratedStroke,,,,layout.chamber.type=30,,,,COMMON-PRACTICE,";
  private static final String MAKER_ONLY = START + ",,,,layout.chamber.type=30,,,,COMMON-PRACTICE,";

  @Test
  void a_plain_value_holds_for_every_brake() {
    assertThat(row(PLAIN).inForce(Layout.UNKNOWN).map(LimitInForce::written)).contains("2 in");
  }

  @Test
  void a_row_without_a_value_never_holds_by_itself() {
    assertThat(row(MAKER_ONLY).inForce(layout("30", "2.5 in"))).isEmpty();
    assertThat(row(MAKER_ONLY).limit().inWords()).isEqualTo("at most the maker's figure");
  }

  @Test
  void a_share_holds_with_its_value_and_how_it_was_found() {
    LimitInForce limit = row(SHARE).inForce(layout("30", "2.5 in")).orElseThrow();
    assertThat(limit.value()).isEqualTo(Length.parse("2 in"));
    assertThat(limit.written()).isEqualTo("2 in, which is 80 % of the rated stroke");
    assertThat(row(SHARE).inForce(layout("30", ""))).isEmpty();
  }

  @ParameterizedTest(name = "type {0}, rated {1}: share asks for {2}, plain for {3}")
  @CsvSource({
    "30, 2.5 in, '',                                              ''",
    "30, '',     layout.chamber.ratedStroke,                      ''",
    "'', 2.5 in, layout.chamber.type,                             layout.chamber.type",
    "'', '',     layout.chamber.type;layout.chamber.ratedStroke,  layout.chamber.type",
  })
  void what_is_not_stated_is_named_and_the_stroke_only_where_the_value_hangs_on_it(
      String type, String rated, String ofShare, String ofPlain) {
    Subject subject = subject(layout(type, rated));
    assertThat(String.join(";", row(SHARE).unstated(subject))).isEqualTo(ofShare);
    assertThat(String.join(";", row(PLAIN).unstated(subject))).isEqualTo(ofPlain);
  }

  @ParameterizedTest
  @CsvSource({
    "US-49-CFR-393.47#(e)(1), us-federal",
    "QUEBEC-C-24.2-R-32#1,    quebec",
    "COMMON-PRACTICE,         ''",
    "ONTARIO-AIR-BRAKE-HANDBOOK, ''",
  })
  void a_row_knows_whose_law_it_is(String source, String ruleSet) {
    LimitRow row = row(PLAIN.replace("COMMON-PRACTICE", source));
    assertThat(row.law().map(RuleSet::id).orElse("")).isEqualTo(ruleSet);
  }

  private static LimitRow row(String text) {
    return TableTexts.limits(text).rows("chamber.applied-stroke.max").get(0);
  }

  private static Layout layout(String type, String rated) {
    return Layout.of(CamshaftLayout.TUBE)
        .chamber(
            new ChamberSize(
                ChamberFamily.CLAMP,
                type,
                StrokeClass.STANDARD,
                rated.isEmpty() ? Optional.empty() : Optional.of(Length.parse(rated)),
                ""))
        .build();
  }

  private static Subject subject(Layout layout) {
    return new Subject(
        Optional.empty(),
        AxleKind.DRIVE,
        layout,
        Chamber.asFound(WheelEndPath.of(2, Side.LEFT)).build());
  }
}
