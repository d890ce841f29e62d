package org.brakerules.linter.internal.check;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.brakerules.linter.internal.base.Comparison;
import org.brakerules.linter.internal.base.Comparison.ValueKind;
import org.brakerules.linter.internal.base.Pattern;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.FactType;
import org.brakerules.linter.internal.language.Vocabulary;
import org.brakerules.linter.internal.text.Token;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.reading.Station;

/** Of which kind of part a pattern speaks, and at which stations such a part can be. */
final class Whereabouts {

  static final String STATION = "station";
  static final String PART_KIND = "partKind";
  private static final String LIMIT = "limit";

  private final RuleBase base;

  Whereabouts(RuleBase base) {
    this.base = base;
  }

  /** The stations; empty if the pattern leaves open which part it is of. */
  Optional<Set<Station>> stations(Pattern pattern) {
    return kind(pattern).map(PartKind::stations);
  }

  /** The kind of part of a part, or of a fact about one. */
  Optional<PartKind> kind(Pattern pattern) {
    return pattern
        .fact()
        .flatMap(FactType::kind)
        .or(() -> statedKind(pattern))
        .or(() -> kindOfLimit(pattern));
  }

  /** The kind that a pattern demands by {@code partKind}. */
  static Optional<PartKind> statedKind(Pattern pattern) {
    return demanded(pattern, PART_KIND)
        .filter(one -> one.valueKind() == ValueKind.CONSTANT)
        .flatMap(one -> find(PartKind.values(), one.constant()))
        .findFirst();
  }

  /** The kind of part whose limit a pattern names. */
  Optional<PartKind> kindOfLimit(Pattern pattern) {
    return demanded(pattern, LIMIT)
        .filter(one -> one.valueKind() == ValueKind.TEXT)
        .map(one -> one.value().get(0).value())
        .flatMap(id -> base.limits().filter(row -> row.text("id").equals(id)))
        .flatMap(row -> PartKind.byId(row.text("part")).stream())
        .findFirst()
        .filter(kind -> pattern.type().equals(Vocabulary.BEYOND_LIMIT));
  }

  /** The stations that a pattern demands; all if it demands none. */
  static Set<Station> demandedStations(Pattern pattern) {
    Set<Station> left = EnumSet.allOf(Station.class);
    demanded(pattern, STATION)
        .filter(one -> one.valueKind() == ValueKind.CONSTANT)
        .flatMap(one -> find(Station.values(), one.constant()))
        .forEach(station -> left.retainAll(Set.of(station)));
    return left;
  }

  /** What a pattern demands of a property by {@code ==}, with no other choice. */
  static Stream<Comparison> demanded(Pattern pattern, String property) {
    return pattern.constraints().stream()
        .filter(constraint -> constraint.comparisons().size() == 1)
        .map(constraint -> constraint.comparisons().get(0))
        .filter(one -> one.property().is(property) && one.operator().is("=="));
  }

  private static <E extends Enum<E>> Stream<E> find(E[] constants, Token name) {
    return Arrays.stream(constants).filter(constant -> constant.name().equals(name.text()));
  }
}
