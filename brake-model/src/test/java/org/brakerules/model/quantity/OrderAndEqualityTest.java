package org.brakerules.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Order, equality and hash code go by the amount, in whatever units it was written. */
class OrderAndEqualityTest {

  private static final long SEED = 30;
  private static final int PAIRS = 5000;

  static Stream<Arguments> kinds() {
    return Stream.of(
        Arguments.of(Length.class, List.of(LengthUnit.values())),
        Arguments.of(Force.class, List.of(ForceUnit.values())),
        Arguments.of(Torque.class, List.of(TorqueUnit.values())),
        Arguments.of(Pressure.class, List.of(PressureUnit.values())),
        Arguments.of(Angle.class, List.of(AngleUnit.values())),
        Arguments.of(Share.class, List.of(ShareUnit.values())));
  }

  @ParameterizedTest
  @MethodSource("kinds")
  <Q extends Quantity<Q>> void equal_order_goes_with_equals_and_the_same_hash_code(
      Class<Q> type, List<Unit<Q>> units) {
    Random random = new Random(SEED);
    for (int i = 0; i < PAIRS; i++) {
      Q left = quantity(type, units, random);
      Q right = quantity(type, units, random);

      assertThat(left.equals(right))
          .as("%s equals %s, pair %d of the random series %d", left, right, i, SEED)
          .isEqualTo(left.compareTo(right) == 0);
      assertThat(Integer.signum(left.compareTo(right)))
          .as("%s against %s, pair %d of the random series %d", left, right, i, SEED)
          .isEqualTo(-Integer.signum(right.compareTo(left)))
          .isEqualTo(signOfDifference(left, right));
    }
  }

  @ParameterizedTest
  @MethodSource("kinds")
  <Q extends Quantity<Q>> void what_cancels_out_leaves_an_equal_amount_with_the_same_hash_code(
      Class<Q> type, List<Unit<Q>> units) {
    Random random = new Random(SEED);
    for (int i = 0; i < PAIRS; i++) {
      Q amount = quantity(type, units, random);
      Q other = quantity(type, units, random);

      Q back = amount.plus(other).minus(other);

      assertThat(back)
          .as("%s and %s, pair %d of the random series %d", amount, other, i, SEED)
          .isEqualTo(amount)
          .hasSameHashCodeAs(amount)
          .isEqualByComparingTo(amount);
    }
  }

  @ParameterizedTest
  @MethodSource("kinds")
  <Q extends Quantity<Q>> void a_hundred_amounts_have_many_hash_codes(
      Class<Q> type, List<Unit<Q>> units) {
    assertThat(
            IntStream.range(0, 100)
                .mapToObj(number -> Quantities.parse(type, number + " " + units.get(0).symbol()))
                .map(Q::hashCode)
                .distinct())
        .hasSizeGreaterThan(50);
  }

  @ParameterizedTest
  @MethodSource("kinds")
  <Q extends Quantity<Q>> void what_was_read_comes_back_from_its_own_text(
      Class<Q> type, List<Unit<Q>> units) {
    Random random = new Random(SEED);
    for (int i = 0; i < PAIRS; i++) {
      Q amount = quantity(type, units, random);

      Q readAgain = Quantities.parse(type, amount.toString());

      assertThat(readAgain)
          .as("%s, value %d of the random series %d", amount, i, SEED)
          .isEqualTo(amount);
      assertThat(readAgain.unit()).isEqualTo(amount.unit());
    }
  }

  @ParameterizedTest
  @MethodSource("kinds")
  <Q extends Quantity<Q>> void trailing_zeros_make_no_difference(
      Class<Q> type, List<Unit<Q>> units) {
    Map<Q, String> byAmount = new HashMap<>();
    for (Unit<Q> unit : units) {
      byAmount.put(Quantities.parse(type, "10 " + unit.symbol()), unit.symbol());

      assertThat(byAmount)
          .containsEntry(Quantities.parse(type, "10.000 " + unit.symbol()), unit.symbol());
    }
    assertThat(byAmount).hasSameSizeAs(units);
  }

  @ParameterizedTest
  @MethodSource("kinds")
  <Q extends Quantity<Q>> void signs_are_kept(Class<Q> type, List<Unit<Q>> units) {
    for (Unit<Q> unit : units) {
      Q plus = Quantities.parse(type, "2.5 " + unit.symbol());
      Q minus = Quantities.parse(type, "-2.5 " + unit.symbol());

      assertThat(minus.isNegative()).isTrue();
      assertThat(plus.isNegative()).isFalse();
      assertThat(minus.abs()).isEqualTo(plus);
      assertThat(minus).hasToString("-2.5 " + unit.symbol()).isLessThan(plus);
      assertThat(plus.plus(minus)).hasToString("0 " + unit.symbol());
      assertThat(plus).isNotEqualTo("2.5 " + unit.symbol());
    }
  }

  private static <Q extends Quantity<Q>> int signOfDifference(Q left, Q right) {
    Q difference = left.minus(right);
    if (difference.isNegative()) {
      return -1;
    }
    return difference.equals(right.minus(right)) ? 0 : 1;
  }

  /** Few different numbers, so that equal amounts in different units do occur. */
  private static <Q extends Quantity<Q>> Q quantity(
      Class<Q> type, List<Unit<Q>> units, Random random) {
    Unit<Q> unit = units.get(random.nextInt(units.size()));
    BigDecimal number =
        random.nextBoolean()
            ? BigDecimal.valueOf(random.nextInt(21) - 10)
            : BigDecimal.valueOf(random.nextInt(2_000_001) - 1_000_000, 5);
    return Quantities.parse(type, number.toPlainString() + " " + unit.symbol());
  }
}
