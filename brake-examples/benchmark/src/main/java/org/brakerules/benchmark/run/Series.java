package org.brakerules.benchmark.run;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.IntStream;
import org.brakerules.benchmark.result.Measured;

/** What every round measured, by name. */
final class Series {

  private final Map<String, List<Double>> rounds = new HashMap<>();

  /** One more round of a name. */
  void add(String name, double value) {
    rounds.computeIfAbsent(name, none -> new ArrayList<>()).add(value);
  }

  /** The mean of the rounds; empty if it was not measured. */
  Optional<Measured> of(String name) {
    return values(name).map(Measured::of);
  }

  /** The mean over a fixed number, such as the number of wheel ends. */
  Optional<Measured> of(String name, double over) {
    return values(name).map(all -> Measured.of(all.stream().map(one -> one / over).toList()));
  }

  /** One name over another, round by round. */
  Optional<Measured> ratio(String name, String other) {
    return together(name, other, (one, two) -> one / two);
  }

  private Optional<Measured> together(String name, String other, DoubleBinaryOperator way) {
    Optional<List<Double>> ones = values(name);
    Optional<List<Double>> twos = values(other);
    if (ones.isEmpty() || twos.isEmpty() || ones.get().size() != twos.get().size()) {
      return Optional.empty();
    }
    return Optional.of(
        Measured.of(
            IntStream.range(0, ones.get().size())
                .mapToObj(at -> way.applyAsDouble(ones.get().get(at), twos.get().get(at)))
                .toList()));
  }

  private Optional<List<Double>> values(String name) {
    return Optional.ofNullable(rounds.get(name));
  }
}
