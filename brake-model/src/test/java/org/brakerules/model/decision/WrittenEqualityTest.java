package org.brakerules.model.decision;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.Test;

/** Records whose equality is written out: one that differs in any component is another. */
class WrittenEqualityTest {

  private static final WheelEndPath LEFT = WheelEndPath.of(2, Side.LEFT);
  private static final Place NUT = new Place(LEFT, PartKind.JAM_NUT, Station.WHOLE_PART, 1);
  private static final Place BUSHING =
      new Place(LEFT, PartKind.CAMSHAFT_BUSHING, Station.HEAD_END, 1);

  @Test
  void places_and_rule_sets_differ_in_every_component() {
    assertAllDiffer(
        () ->
            List.of(
                WheelEndPath.of(2, Side.LEFT),
                WheelEndPath.of(2, Side.RIGHT),
                WheelEndPath.of(1, Side.LEFT),
                WheelEndPath.of("trailer", 2, Side.LEFT),
                new Place(LEFT, PartKind.CAMSHAFT_BUSHING, Station.HEAD_END, 1),
                new Place(LEFT, PartKind.CAMSHAFT_BUSHING, Station.HEAD_END, 2),
                new Place(LEFT, PartKind.CAMSHAFT_BUSHING, Station.SPLINE_END, 1),
                new Place(LEFT, PartKind.CAMSHAFT_SEAL, Station.HEAD_END, 1),
                new Place(LEFT.partner(), PartKind.CAMSHAFT_BUSHING, Station.HEAD_END, 1),
                new RuleSet("quebec"),
                new RuleSet("us-federal")));
  }

  @Test
  void wheel_ends_stand_in_the_order_of_unit_axle_and_side() {
    assertThat(
            List.of(
                WheelEndPath.of("trailer", 1, Side.LEFT),
                WheelEndPath.of("tractor", 10, Side.LEFT),
                WheelEndPath.of("tractor", 2, Side.RIGHT),
                WheelEndPath.of("tractor", 2, Side.LEFT)))
        .isSortedAccordingTo((one, other) -> other.compareTo(one));
    assertThat(LEFT).isEqualByComparingTo(WheelEndPath.of(2, Side.LEFT));
  }

  @Test
  void checks_differ_in_every_component() {
    Optional<Quantity<?>> margin = Optional.of(Length.parse("1 mm"));
    assertAllDiffer(
        () ->
            List.of(
                check(BUSHING, "play", "a.max", CheckStatus.BEYOND, Optional.empty()),
                check(NUT, "play", "a.max", CheckStatus.BEYOND, Optional.empty()),
                check(BUSHING, "wear", "a.max", CheckStatus.BEYOND, Optional.empty()),
                check(BUSHING, "play", "b.max", CheckStatus.BEYOND, Optional.empty()),
                check(BUSHING, "play", "a.max", CheckStatus.WITHIN, Optional.empty()),
                check(BUSHING, "play", "a.max", CheckStatus.BEYOND, margin)));
  }

  @Test
  void evidence_differs_in_every_component() {
    Optional<Quantity<?>> none = Optional.empty();
    assertAllDiffer(
        () ->
            List.of(
                new Evidence.Stated(BUSHING, "crack", "seen"),
                new Evidence.Stated(NUT, "crack", "seen"),
                new Evidence.Stated(BUSHING, "wear", "seen"),
                new Evidence.Stated(BUSHING, "crack", "not-seen"),
                new Evidence.Built(LEFT, "hand", "left"),
                new Evidence.Built(LEFT.partner(), "hand", "left"),
                new Evidence.Built(LEFT, "tube", "left"),
                new Evidence.Built(LEFT, "hand", "right"),
                new Evidence.Measured(check(BUSHING, "play", "a.max", CheckStatus.BEYOND, none)),
                new Evidence.Measured(check(NUT, "play", "a.max", CheckStatus.BEYOND, none))));
  }

  @Test
  void reasons_differ_in_every_component() {
    Evidence crack = new Evidence.Stated(BUSHING, "crack", "seen");
    Evidence disturbed = new Evidence.WasDisturbed(BUSHING);
    assertAllDiffer(
        () ->
            List.of(
                reason("A-010", "Worn", Verdict.REPLACE, "Worn.", "Do it.", crack),
                reason("A-020", "Worn", Verdict.REPLACE, "Worn.", "Do it.", crack),
                reason("A-010", "Bent", Verdict.REPLACE, "Worn.", "Do it.", crack),
                reason("A-010", "Worn", Verdict.HOLD, "Worn.", "Do it.", crack),
                reason("A-010", "Worn", Verdict.REPLACE, "Bent.", "Do it.", crack),
                reason("A-010", "Worn", Verdict.REPLACE, "Worn.", "Wait.", crack),
                reason("A-010", "Worn", Verdict.REPLACE, "Worn.", "Do it.", disturbed)));
  }

  /** Made twice, all are equal pair by pair, and each equals itself alone. */
  private static void assertAllDiffer(Supplier<List<Object>> things) {
    List<Object> all = things.get();
    List<Object> again = things.get();

    assertThat(again).isEqualTo(all);
    assertThat(again.stream().map(Object::hashCode).toList())
        .isEqualTo(all.stream().map(Object::hashCode).toList());
    assertThat(new HashSet<>(all)).hasSameSizeAs(all).doesNotContain("another thing");
    for (Object one : all) {
      assertThat(again.stream().filter(one::equals)).hasSize(1);
    }
  }

  private static Check check(
      Place part, String property, String id, CheckStatus status, Optional<Quantity<?>> margin) {
    return new Check(part, property, id, status, Optional.empty(), Optional.empty(), margin);
  }

  private static Reason reason(
      String rule, String title, Verdict verdict, String sentence, String action, Evidence rests) {
    return new Reason(rule, title, verdict, sentence, action, List.of(rests), List.of());
  }
}
