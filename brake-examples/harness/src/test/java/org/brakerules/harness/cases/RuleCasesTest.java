package org.brakerules.harness.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.HashSet;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.BrakeRules;
import org.brakerules.Rule;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every case beside the rules, and that the rules have all the cases they need. */
class RuleCasesTest {

  private static final BrakeRules RULES = BrakeRules.standard();
  private static final CaseFiles CASES = CaseFiles.ofThisArtifact();

  @TestFactory
  Stream<DynamicNode> every_case_comes_out_as_expected() {
    CaseRunner runner = new CaseRunner(RULES);
    return CASES.components().stream()
        .map(
            component ->
                dynamicContainer(
                    component,
                    CASES.cases(component).stream()
                        .map(
                            one ->
                                dynamicTest(
                                    one.name(),
                                    () -> assertThat(runner.run(one).mismatches()).isEmpty()))));
  }

  @Test
  void every_rule_has_a_case_in_which_it_fires() {
    assertThat(rules()).isSubsetOf(named(expected -> expected.fires().stream()));
  }

  @Test
  void every_rule_has_a_near_miss_that_names_the_condition_that_fails() {
    assertThat(rules())
        .isSubsetOf(
            named(expected -> expected.fails().isBlank() ? Stream.of() : expected.near().stream()));
  }

  @Test
  void every_case_expects_something() {
    assertThat(CASES.all())
        .allSatisfy(
            one -> {
              RuleCase.Expected expected = one.expected();
              assertThat(
                      expected.fires().size()
                          + expected.near().size()
                          + expected.speaks().size()
                          + expected.dispositions().size()
                          + expected.holds().size()
                          + expected.needs().size()
                          + expected.road().size())
                  .as(one.name())
                  .isPositive();
            });
  }

  @Test
  void no_two_cases_of_a_component_have_the_same_name() {
    Set<String> names = new HashSet<>();
    assertThat(CASES.all())
        .allSatisfy(
            one ->
                assertThat(names.add(one.component() + ": " + one.name())).as(one.name()).isTrue());
  }

  private static Set<String> rules() {
    return RULES.rules().stream().map(Rule::id).collect(Collectors.toSet());
  }

  private static Set<String> named(Function<RuleCase.Expected, Stream<String>> rules) {
    return CASES.all().stream().map(RuleCase::expected).flatMap(rules).collect(Collectors.toSet());
  }
}
