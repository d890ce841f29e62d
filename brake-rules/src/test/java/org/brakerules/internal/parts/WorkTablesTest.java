package org.brakerules.internal.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.brakerules.BrakeRules;
import org.brakerules.Rule;
import org.brakerules.internal.table.CsvTable;
import org.brakerules.internal.table.Row;
import org.brakerules.internal.table.RuleBaseException;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.part.PartKind;
import org.brakerules.parts.Item;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The tables of items, quantities and axle sets, row by row. */
class WorkTablesTest {

  private static final Tables TABLES = Tables.load();
  private static final PartsTables PARTS = PartsTables.load(TABLES.sources());
  private static final String HEADER =
      "id,part,item,applies-to,count,confirmed,depends-on,with,minimum-set,salvage,source,note\n";

  @ParameterizedTest
  @EnumSource
  void every_kind_of_part_is_an_item_and_has_a_quantity(PartKind kind) {
    assertThat(PARTS.items().general(kind).part()).contains(kind);
    assertThat(PARTS.quantities().rows().filter(QuantityRow::isOfThePart))
        .anyMatch(row -> row.part() == kind);
  }

  @Test
  void every_item_is_called_for_by_some_row() {
    List<Item> called = PARTS.quantities().rows().map(QuantityRow::item).toList();

    assertThat(PARTS.all())
        .filteredOn(item -> !called.contains(item))
        .extracting(Item::id)
        .as("items for what is not stated of a part")
        .containsExactly("camshaft", "lining");
  }

  @Test
  void what_comes_with_another_item_brings_that_item_on_the_list() {
    assertThat(PARTS.quantities().rows())
        .filteredOn(row -> row.comesWith().isPresent())
        .extracting(row -> row.part().id() + " with " + row.comesWith().orElseThrow().id())
        .containsExactlyInAnyOrder(
            "anchor-pin with spider",
            "lining with shoe-with-lining",
            "lining with shoe-with-lining",
            "spring-brake with chamber",
            "push-rod with chamber",
            "chamber with chamber",
            "chamber with chamber");
  }

  @Test
  void minimum_set_of_a_reline_is_what_the_trade_renews_together() {
    assertThat(PARTS.quantities().rows().filter(QuantityRow::minimumSet).map(QuantityRow::part))
        .containsOnly(
            PartKind.CAM_ROLLER,
            PartKind.ROLLER_CLIP,
            PartKind.ANCHOR_PIN,
            PartKind.ANCHOR_BUSHING,
            PartKind.ANCHOR_PIN_RETAINER,
            PartKind.RETURN_SPRING,
            PartKind.SHOE_RETAINING_SPRING,
            PartKind.SHOE,
            PartKind.LINING);
  }

  @Test
  void axle_sets_name_rules_that_there_are() {
    List<String> rules = BrakeRules.standard().rules().stream().map(Rule::id).toList();

    assertThat(PARTS.axleSets().entries().flatMap(entry -> entry.decidedBy().stream()))
        .isNotEmpty()
        .isSubsetOf(rules);
    assertThat(PARTS.axleSets().entries().map(AxleSetTable.Entry::id)).doesNotHaveDuplicates();
  }

  /** What comes off for another part is used once, so the brake is never said to keep it. */
  @Test
  void what_is_used_once_comes_off_for_other_kinds_of_parts() {
    assertThat(PARTS.usedOnce().entries())
        .isNotEmpty()
        .allSatisfy(
            entry ->
                assertThat(entry.comesOffFor())
                    .as(entry.id())
                    .contains(PartKind.CAMSHAFT_SEAL)
                    .doesNotContain(entry.part()));
  }

  @Test
  void what_is_asked_for_names_rules_that_replace_the_part() {
    List<Rule> rules = BrakeRules.standard().rules();

    assertThat(PARTS.askedFor().entries().map(AskedForTable.Entry::id)).doesNotHaveDuplicates();
    assertThat(PARTS.askedFor().entries())
        .allSatisfy(
            entry ->
                assertThat(entry.decidedBy())
                    .as(entry.id())
                    .isNotEmpty()
                    .allSatisfy(
                        id ->
                            assertThat(rules)
                                .anyMatch(
                                    rule ->
                                        rule.id().equals(id)
                                            && id.startsWith(
                                                entry.part().name().replace('_', '-')))));
  }

  @Test
  void quantities_of_a_decision_name_rules_and_axle_sets_that_there_are() {
    List<String> known =
        Stream.concat(
                BrakeRules.standard().rules().stream().map(Rule::id),
                PARTS.axleSets().entries().map(AxleSetTable.Entry::id))
            .toList();

    assertThat(PARTS.quantities().rows().flatMap(row -> row.decidedBy().stream()))
        .isNotEmpty()
        .isSubsetOf(known);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          q.a,drums,drum,,1,yes,,,no,no,COMMON-PRACTICE, | "drums" is no kind of part; did you mean "drum"?.
          q.a,drum,drumm,,1,yes,,,no,no,COMMON-PRACTICE, | "drumm" is no item; did you mean "drum"?.
          q.a,drum,drum,,two,no,count them,,no,no,COMMON-PRACTICE, | "two" is no count; write 1 to 99, or nothing.
          q.a,drum,drum,,1,perhaps,,,no,no,COMMON-PRACTICE, | "perhaps" is no answer; known are yes, no.
          q.a,drum,drum,,1,no,,,no,no,COMMON-PRACTICE, | "depends-on" says why a number is not confirmed, and only then.
          q.a,drum,drum,,,yes,,,no,no,COMMON-PRACTICE, | a confirmed row must have a count.
          q.a,drum,drum,,1,yes,,,no,no,COMMON-PRACTISE, | "COMMON-PRACTISE" is no source; did you mean "COMMON-PRACTICE"?.
          q.a,drum,drum,layout.web=double,1,yes,,,no,no,COMMON-PRACTICE, | "web" is no property of a layout; did you mean "webs"?.
          """)
  void a_row_that_cannot_be_used_is_told_with_its_line(String row, String message) {
    List<Row> rows =
        CsvTable.read(
            "quantities.csv",
            new ByteArrayInputStream((HEADER + row).getBytes(StandardCharsets.UTF_8)));

    assertThatThrownBy(() -> new QuantityTable(rows, PARTS.items(), TABLES.sources()))
        .isInstanceOf(RuleBaseException.class)
        .hasMessage("quantities.csv line 2: " + message);
  }
}
