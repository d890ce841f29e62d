package org.brakerules.internal.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.quantity.Pressure;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a rule set says of a whole vehicle. */
class RuleSetTableTest {

  private static final String HEADER =
      "id,title,test-pressure-least,test-pressure-most,test-pressure-source,"
          + "automatic-adjusters-from,automatic-adjusters-source";

  @Test
  void a_rule_set_has_a_title_a_test_pressure_and_a_day() {
    RuleSetTable table = table("here,Here,80 psi,90 psi,LAW,1994-10-20,LAW");
    RuleSet here = table.find("here").orElseThrow();
    assertThat(table.titles()).isEqualTo(Map.of("here", "Here"));
    assertThat(table.testPressure(here))
        .contains(new TestPressure(Pressure.parse("80 psi"), Pressure.parse("90 psi")));
    assertThat(table.automaticAdjustersFrom(here)).contains(LocalDate.of(1994, 10, 20));
  }

  @Test
  void what_a_rule_set_leaves_open_is_empty() {
    RuleSetTable table = table("here,Here,,,,,");
    RuleSet here = new RuleSet("here");
    assertThat(table.testPressure(here)).isEmpty();
    assertThat(table.automaticAdjustersFrom(here)).isEmpty();
  }

  @Test
  void a_rule_set_that_is_not_there_is_not_found_and_asks_for_nothing() {
    RuleSetTable table = table("here,Here,80 psi,90 psi,LAW,1994-10-20,LAW");
    assertThat(table.find("there")).isEmpty();
    assertThat(table.testPressure(new RuleSet("there"))).isEmpty();
    assertThat(table.automaticAdjustersFrom(new RuleSet("there"))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          here,Here,80 psi,,LAW,,            | "test-pressure-most" is empty
          here,Here,,,,the autumn of 1994,   | "the autumn of 1994" is no date; write 2026-11-20
          """)
  void a_slip_is_refused_with_its_line(String row, String message) {
    assertThatThrownBy(() -> table(row))
        .isInstanceOf(RuleBaseException.class)
        .hasMessageStartingWith("invented.csv line 2: ")
        .hasMessageContaining(message);
  }

  @ParameterizedTest(name = "{0}: {1} to {2}, adjusters from {3}")
  @DisplayName(
      "396 App A 1.a(5)(a) and 393.53, verified; handbook and Canadian day, as their sources stand")
  @CsvSource({
    "us-federal, 80 psi, 90 psi,  1994-10-20",
    "quebec,     90 psi, 100 psi, 1996-05-31",
  })
  void the_rule_sets_of_the_rule_base(String id, String least, String most, LocalDate from) {
    RuleSetTable table = Tables.load().ruleSets();
    RuleSet ruleSet = table.find(id).orElseThrow();
    assertThat(table.testPressure(ruleSet))
        .contains(new TestPressure(Pressure.parse(least), Pressure.parse(most)));
    assertThat(table.automaticAdjustersFrom(ruleSet)).contains(from);
  }

  @ParameterizedTest
  @ValueSource(strings = {"test-pressure-source", "automatic-adjusters-source"})
  void what_a_rule_set_says_of_a_vehicle_cites_a_known_source(String column) {
    Tables tables = Tables.load();
    List<Row> rows = RuleSetFolders.ruleSets(RuleBaseFiles.ofThisArtifact());
    assertThat(rows)
        .isNotEmpty()
        .flatExtracting(row -> row.list(column))
        .isNotEmpty()
        .allMatch(citation -> tables.sources().find(citation).isPresent());
  }

  private static RuleSetTable table(String row) {
    return new RuleSetTable(TableTexts.rows(HEADER, row));
  }
}
