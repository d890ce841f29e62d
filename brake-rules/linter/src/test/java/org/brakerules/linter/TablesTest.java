package org.brakerules.linter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakerules.linter.SmallRuleBase.LIMITS;
import static org.brakerules.linter.SmallRuleBase.POINTS;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The tables of limits, points, sources and cautions. */
class TablesTest {

  private static final String LIMIT = LIMITS.lines().skip(1).findFirst().orElseThrow() + "\n";

  @TempDir Path folder;
  private SmallRuleBase rules;

  @BeforeEach
  void aSmallRuleBase() throws IOException {
    rules = new SmallRuleBase(folder);
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '~',
      textBlock =
          """
          camshaft.end-play.max ~ drum.end-play.max ~ 2:1 [table-id] the limit "drum.end-play.max" stands in the folder camshaft -> begin its id with "camshaft.", or move it to its own folder
          endPlay ~ rotation ~ 2:32 [limit-without-point] no inspection point asks for rotation of camshaft -> add the point to camshaft.points.csv
          COMMON-PRACTICE ~ COMMON-PRACTICE; US-ARMY-TM-5-4210-220-12#4-30 ~ 2:88 [table-form] the limit has more than one source -> name the one its value comes from; put the others into the note
          COMMON-PRACTICE ~ COMON-PRACTICE ~ 2:88 [unknown-source] "COMON-PRACTICE" is not in the table of sources -> write "COMMON-PRACTICE"
          rule-set ~ ruleset ~ 1:69 [table-form] "ruleset" is no column of this table -> write "rule-set"
          """)
  void a_mistake_in_a_limit_is_told(String written, String instead, String problem)
      throws IOException {
    rules.write("camshaft/camshaft.limits.csv", LIMITS.replace(written, instead));
    assertThat(rules.problems()).contains(problem);
  }

  @Test
  void rows_of_one_limit_differ_in_what_they_apply_to_only() throws IOException {
    String other = LIMIT.replace("at most", "at least").replace("0.030 in,", "0.005 in,");
    rules.write("camshaft/camshaft.limits.csv", LIMITS + other.replace(",,,,,", ",,,quebec,,"));
    assertThat(rules.problems())
        .containsExactly(
            "3:40 [table-id] \"camshaft.end-play.max\" has comparison \"at least\" here and"
                + " \"at most\" in line 2 -> give another limit another id");
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
          at most ~ no more than ~ 2:40 [unknown-word] "no more than" is no comparison, so the table cannot be used -> write one of "at least", "at most", "less than", "more than"
          at most ~ (nothing) ~ 2:40 [missing-cell] comparison is empty, so the row cannot be used -> state it; in this column an empty cell means nothing
          endPlay ~ endplays ~ 2:32 [table-property] the camshaft has no property "endplays" to ask for -> write "endPlay"
          ,camshaft, ~ ,camshft, ~ 2:23 [unknown-word] "camshft" is no kind of part, so the table cannot be used -> write "camshaft"
          """)
  void a_cell_that_is_told_itself_is_held_against_no_other_row(
      String written, String instead, String problem) throws IOException {
    String wrong = LIMIT.replace(written, instead.equals("(nothing)") ? "" : instead);
    String header = LIMITS.replace(LIMIT, "");
    rules.write(
        "camshaft/camshaft.limits.csv",
        header
            + wrong.replace("-indicator,,,,", "-indicator,,,quebec,")
            + LIMIT.replace("-indicator,,,,", "-indicator,,,us-federal,"));
    assertThat(rules.problems()).containsExactly(problem);
  }

  @Test
  void a_limit_that_is_there_twice_for_the_same_parts_is_told() throws IOException {
    rules.write("camshaft/camshaft.limits.csv", LIMITS + LIMIT.replace("0.030", "0.040"));
    assertThat(rules.problems())
        .containsExactly(
            "3:1 [table-id] \"camshaft.end-play.max\" is there twice for the same parts, rule set"
                + " and dates -> tell the rows apart by applies-to, rule-set, from or to, or take"
                + " one out");
  }

  @Test
  void a_row_with_too_few_cells_is_told() throws IOException {
    rules.write("camshaft/camshaft.points.csv", POINTS + "camshaft.flat,camshaft,flat\n");
    assertThat(rules.problems())
        .containsExactly(
            "5:1 [table-form] the row has 3 cells, the header 11 -> give each column one cell, an"
                + " empty one if need be; put a cell with a comma in quotes");
  }

  @ParameterizedTest
  @CsvSource({"camshaft.cracked", "drum.crack", "camshaft.Crack"})
  void the_id_of_a_point_is_its_folder_and_property(String id) throws IOException {
    rules.write("camshaft/camshaft.points.csv", POINTS.replace("camshaft.crack", id));
    assertThat(rules.problems())
        .containsExactly(
            "3:1 [table-id] \""
                + id
                + "\" does not name its folder and property -> write \"camshaft.crack\"");
  }

  @Test
  void a_point_that_is_there_twice_is_told() throws IOException {
    String point = POINTS.lines().skip(2).findFirst().orElseThrow() + "\n";
    rules.write("camshaft/camshaft.points.csv", POINTS + point);
    assertThat(rules.problems())
        .containsExactly(
            "5:1 [table-id] \"camshaft.crack\" is there twice -> keep one row for each property");
  }

  @Test
  void a_caution_cites_known_sources() throws IOException {
    rules.write(
        "cautions.csv",
        """
        id,from,text,source
        chock,wheel-on,Chock the wheels.,COMMON-PRACTICE; MAKER
        """);
    assertThat(rules.problems())
        .containsExactly(
            "2:51 [unknown-source] \"MAKER\" is not in the table of sources"
                + " -> write one of \"COMMON-PRACTICE\", \"US-ARMY-TM-5-4210-220-12\"");
  }

  @Test
  void a_table_that_is_not_there_is_told() throws IOException {
    Files.delete(folder.resolve("org/brakerules/rules/cautions.csv"));
    assertThat(rules.problems())
        .containsExactly(
            "1:1 [table-form] there is no such table -> add it with \"id,from,text,source\"");
  }

  @Test
  void an_empty_table_is_told() throws IOException {
    rules.write("cautions.csv", "");
    assertThat(rules.problems())
        .containsExactly(
            "1:1 [table-form] the table is empty -> begin it with \"id,from,text,source\"");
  }

  @Test
  void a_quote_left_open_in_a_table_is_told() throws IOException {
    rules.write("cautions.csv", "id,from,text,source\nchock,wheel-on,\"Chock,COMMON-PRACTICE\n");
    assertThat(rules.problems())
        .containsExactly(
            "3:1 [table-form] a quote in this row, or in one above it, is not closed or stands"
                + " inside a cell -> put the whole cell between quotes, and write a quote inside it"
                + " twice");
  }

  @Test
  void a_table_that_a_spreadsheet_saved_is_read() throws IOException {
    rules.write("sources.csv", "\uFEFF" + SmallRuleBase.SOURCES);
    assertThat(rules.problems()).isEmpty();
  }

  @Test
  void a_table_of_sources_that_cannot_be_read_is_told_once_and_no_citation_is_blamed()
      throws IOException {
    rules.write("sources.csv", SmallRuleBase.SOURCES.replaceFirst("id,title", "id\ttitle"));
    assertThat(rules.problems())
        .isNotEmpty()
        .noneMatch(problem -> problem.contains("[unknown-source]"))
        .noneMatch(problem -> problem.endsWith("-> write \"\""));
  }
}
