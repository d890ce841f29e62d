package org.brakerules.model.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.brakerules.model.job.Axle;
import org.brakerules.model.layout.AxleKind;
import org.junit.jupiter.api.Test;

class ProblemsTest {

  private final Problems problems = new Problems();

  @Test
  void a_record_that_refuses_its_values_is_a_problem_at_its_object() {
    Node node = new Node.Members(new Spot(null, "", 3, 7), Map.of());

    assertThat(problems.build(node, () -> new Axle(2, AxleKind.DRIVE, List.of()))).isEmpty();
    assertThat(problems.asException())
        .hasMessage(
            "line 3, column 7: found an object that is refused: Axle 2 has no wheel end., expected"
                + " values that fit together");
  }

  @Test
  void a_message_stays_on_its_line_whatever_the_names_in_the_document() {
    Spot spot = new Spot(new Spot(null, "", 1, 1), "a/b~c\nd\u2028e", 2, 3);

    problems.add(spot, Shown.quoted("x\u202Ey"), "something else");

    assertThat(problems.asException())
        .hasMessage(
            "line 2, column 3, /a~1b~0c\\u{a}d\\u{2028}e: found \"x\\u{202e}y\", expected something"
                + " else");
  }

  @Test
  void a_long_text_is_not_repeated_in_full() {
    assertThat(Shown.quoted("x".repeat(100))).isEqualTo("\"" + "x".repeat(60) + "...\"");
  }
}
