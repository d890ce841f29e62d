package org.brakerules.benchmark.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import org.brakerules.model.part.PartKind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TradeTest {

  @ParameterizedTest
  @EnumSource
  void every_kind_of_part_has_something_to_look_at_and_something_that_follows(PartKind kind) {
    assertThat(Trade.points(kind)).isNotEmpty();
    assertThat(Trade.sentences(kind)).isNotEmpty();
  }

  @ParameterizedTest
  @EnumSource
  void the_tables_speak_only_of_properties_that_the_part_has(PartKind kind) {
    Set<String> properties =
        Arrays.stream(kind.recordType().getRecordComponents())
            .map(component -> component.getName())
            .collect(Collectors.toSet());

    assertThat(Trade.points(kind))
        .extracting(Point::property)
        .allMatch(name -> name.contains(".") || properties.contains(name));
    assertThat(Trade.FIGURES)
        .filteredOn(figure -> figure.part() == kind)
        .extracting(Figure::property)
        .isSubsetOf(properties);
    assertThat(Trade.sentences(kind))
        .flatExtracting(sentence -> sentence.subject().signs())
        .isSubsetOf(properties);
  }

  @ParameterizedTest
  @EnumSource
  void a_sentence_asks_only_for_looks_that_are_points_of_the_part(PartKind kind) {
    Set<String> points =
        Trade.points(kind).stream().map(Point::property).collect(Collectors.toSet());

    assertThat(
            Arrays.stream(PartKind.values())
                .flatMap(from -> Trade.sentences(from).stream())
                .flatMap(
                    sentence ->
                        sentence.effects().stream()
                            .filter(effect -> !effect.property().isEmpty())
                            .filter(
                                effect ->
                                    effect.target().orElse(sentence.subject()).kind() == kind))
                .map(Effect::property))
        .isSubsetOf(points);
  }
}
