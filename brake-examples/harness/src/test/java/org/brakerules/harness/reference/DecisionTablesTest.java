package org.brakerules.harness.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.BrakeRules;
import org.brakerules.Rule;
import org.brakerules.limit.Limit;
import org.junit.jupiter.api.Test;

/** The rows of the decision tables and the rules that answer them know each other. */
class DecisionTablesTest {

  private static final BrakeRules RULES = BrakeRules.standard();
  private static final RuleBaseFiles FILES = RuleBaseFiles.ofThisArtifact();

  @Test
  void every_name_in_a_row_is_a_rule_a_limit_or_an_inspection_point() {
    Set<String> known =
        Stream.of(rules(), limits(), points()).flatMap(names -> names).collect(Collectors.toSet());
    assertThat(named()).isNotEmpty().isSubsetOf(known);
  }

  @Test
  void every_rule_answers_a_row() {
    assertThat(rules()).isNotEmpty().allMatch(named()::contains);
  }

  @Test
  void every_limit_answers_a_row() {
    assertThat(limits()).isNotEmpty().allMatch(named()::contains);
  }

  @Test
  void no_row_is_there_twice() {
    assertThat(
            FILES.rows("decision-tables.csv").stream()
                .map(row -> row.get("table") + "|" + row.get("part") + "|" + row.get("sign")))
        .isNotEmpty()
        .doesNotHaveDuplicates();
  }

  private static Set<String> named() {
    return FILES.rows("decision-tables.csv").stream()
        .flatMap(row -> row.names("rules").stream())
        .collect(Collectors.toSet());
  }

  private static Stream<String> rules() {
    return RULES.rules().stream().map(Rule::id);
  }

  private static Stream<String> limits() {
    return RULES.limits().stream().map(Limit::id).distinct();
  }

  private static Stream<String> points() {
    return RULES.components().stream()
        .flatMap(component -> FILES.rows(component + "/" + component + ".points.csv").stream())
        .map(row -> row.get("id"));
  }
}
