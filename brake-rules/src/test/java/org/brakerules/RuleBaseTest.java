package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.internal.engine.RuleEngine;
import org.brakerules.internal.engine.RuleText;
import org.brakerules.internal.fact.Brake;
import org.brakerules.internal.table.CsvTable;
import org.brakerules.internal.table.LimitRow;
import org.brakerules.internal.table.Point;
import org.brakerules.internal.table.Point.Owner;
import org.brakerules.internal.table.Selector.Fit;
import org.brakerules.internal.table.Subject;
import org.brakerules.internal.table.Tables;
import org.brakerules.limit.Limit;
import org.brakerules.model.decision.Source;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.AxleMatter;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.Tag;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.reading.Station;
import org.brakerules.random.Records;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The rule base itself: every rule, limit, point and source in its place and of some use. */
class RuleBaseTest {

  private static final Tables TABLES = Tables.load();
  private static final WheelEndPath LEFT = WheelEndPath.of(2, Side.LEFT);
  private static final RuleEngine ENGINE = RuleEngine.load(TABLES);
  private static final Pattern RULE =
      Pattern.compile("(?m)^rule \"([A-Z-]+)-(\\d{3}) ([^\"]+)\"$(.*?)^end$", Pattern.DOTALL);
  private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"");

  /** One rule as its file has it. */
  record Written(String folder, String prefix, int number, String title, String body) {

    String id() {
      return prefix + "-" + "%03d".formatted(number);
    }

    String metadata(String key) {
      return Pattern.compile("@" + key + "\\(\"([^\"]*)\"\\)")
          .matcher(body)
          .results()
          .map(one -> one.group(1))
          .collect(Collectors.joining());
    }

    String conditions() {
      return body.substring(body.indexOf("\nwhen"), body.indexOf("\nthen"));
    }

    String verdict() {
      return body.substring(body.indexOf("\nthen") + "\nthen".length()).strip();
    }

    @Override
    public String toString() {
      return id();
    }
  }

  static Stream<Written> rules() {
    return Tables.components().stream().flatMap(RuleBaseTest::rulesOf);
  }

  @Test
  void every_rule_in_the_files_is_in_the_engine_and_no_other() {
    assertThat(ENGINE.rules().stream().map(RuleText::id))
        .containsExactlyInAnyOrderElementsOf(rules().map(Written::id).toList())
        .doesNotHaveDuplicates()
        .hasSizeGreaterThan(400);
  }

  @ParameterizedTest
  @MethodSource("rules")
  void each_rule_says_once_where_it_comes_from_what_was_found_and_what_to_do(Written rule) {
    for (String key : List.of("source", "because", "action")) {
      assertThat(count(rule.body(), "@" + key + "(")).as("@%s", key).isOne();
      assertThat(rule.metadata(key)).as("@%s", key).isNotBlank();
    }
    assertThat(rule.metadata("because")).matches("[A-Z{].*\\.");
    assertThat(rule.metadata("action")).matches("[A-Z].*\\.");
    assertThat(count(rule.body(), "@")).as("no other metadata").isEqualTo(3);
  }

  @ParameterizedTest
  @MethodSource("rules")
  void the_id_of_a_rule_is_its_folder_and_its_title_is_short(Written rule) {
    assertThat(rule.prefix()).isEqualTo(rule.folder().toUpperCase(Locale.ROOT));
    assertThat(rule.title().split(" ")).hasSizeLessThanOrEqualTo(10);
    assertThat(rule.title()).matches("[A-Z][^.]*");
  }

  @ParameterizedTest
  @MethodSource("rules")
  void a_rule_gives_one_verdict_and_nothing_else(Written rule) {
    assertThat(rule.verdict())
        .matches(
            "verdict\\.(replace|clean|adjust|hold)\\( \\$part \\);"
                + "|verdict\\.(lookAt|measureAgain)\\( \\$part, \"[a-z.-]+\" \\);");
  }

  @ParameterizedTest
  @MethodSource("rules")
  void no_rule_names_a_number(Written rule) {
    assertThat(QUOTED.matcher(rule.conditions()).replaceAll("")).doesNotContainPattern("[0-9]");
    assertThat(rule.metadata("because") + rule.metadata("action")).doesNotContainPattern("[0-9]");
    assertThat(rule.verdict()).doesNotContainPattern("[0-9]");
  }

  @ParameterizedTest
  @MethodSource("rules")
  void no_rule_leaves_its_language(Written rule) {
    assertThat(QUOTED.matcher(rule.body()).replaceAll(""))
        .doesNotContainPattern("\\b(salience|eval|accumulate|from|modify|insert|update|delete)\\b");
  }

  @ParameterizedTest
  @MethodSource("folders")
  void the_rules_of_a_file_ascend_in_steps_of_ten(String folder) {
    List<Integer> numbers = rulesOf(folder).map(Written::number).toList();
    assertThat(numbers).isSorted().doesNotHaveDuplicates().allMatch(number -> number % 10 == 0);
  }

  @ParameterizedTest
  @MethodSource("folders")
  void a_file_holds_as_many_rules_as_the_test_can_read(String folder) {
    assertThat(rulesOf(folder).count()).isEqualTo(count("\n" + drl(folder), "\nrule "));
  }

  @Test
  void every_limit_is_read_by_a_rule_and_every_limit_a_rule_reads_is_there() {
    Set<String> read =
        rules()
            .flatMap(rule -> found(rule.conditions(), "limit == \"([^\"]+)\""))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(read).containsExactlyInAnyOrderElementsOf(TABLES.limits().ids());
  }

  @Test
  void every_limit_has_a_point_that_asks_for_its_reading() {
    assertThat(limits())
        .allSatisfy(
            limit ->
                assertThat(TABLES.points().of(limit.part()))
                    .as("%s", limit.id())
                    .extracting(point -> point.property().name())
                    .contains(limit.property()));
  }

  /** A point that asks for the reading where the limit does not take it would never be settled. */
  @Test
  void every_limit_takes_its_reading_where_its_point_asks_for_it() {
    for (LimitRow row : TABLES.limits().rows().toList()) {
      Limit limit = row.limit();
      for (Station own : limit.part().stations()) {
        Subject blank = blank(limit.part(), own);
        TABLES.points().of(limit.part()).stream()
            .filter(point -> point.property().name().equals(limit.property()))
            .filter(point -> point.at().isPresent() && row.selector().fit(blank) != Fit.NO)
            .forEach(
                point ->
                    assertThat(point.at())
                        .as("%s", limit.id())
                        .hasValue(limit.station().orElse(own)));
      }
    }
  }

  @Test
  void the_ids_of_limits_begin_with_their_folder() {
    assertThat(limits())
        .allSatisfy(limit -> assertThat(limit.id()).startsWith(limit.part().id() + "."));
  }

  @Test
  void the_ids_of_points_are_their_folder_and_property() {
    assertThat(TABLES.points().points())
        .allSatisfy(
            point ->
                assertThat(point.id())
                    .isEqualTo(point.part().id() + owner(point) + "." + point.property().idName()));
  }

  @Test
  void every_source_is_cited_and_every_citation_is_known() {
    Stream<Source> ofRules = ENGINE.rules().stream().flatMap(rule -> rule.sources().stream());
    Stream<Source> ofLimits = limits().stream().map(Limit::source);
    Stream<Source> ofCautions =
        TABLES.cautions().due(Scope.CAMSHAFT_OUT).stream().flatMap(one -> one.source().stream());
    Stream<Source> ofWork =
        Stream.of("criteria", "retention")
            .flatMap(
                table -> CsvTable.ofResource("/org/brakerules/work/" + table + ".csv").stream())
            .map(row -> TABLES.sources().find(row.required("source")).orElseThrow());
    List<Source> cited =
        Stream.of(ofRules, ofLimits, ofCautions, ofWork).flatMap(one -> one).toList();
    assertThat(cited.stream().map(Source::id).distinct())
        .containsExactlyInAnyOrderElementsOf(TABLES.sources().ids());
  }

  @Test
  void every_point_is_read_by_a_rule_or_a_limit() {
    assertThat(TABLES.points().points().stream().filter(point -> !isRead(point)).map(Point::id))
        .isEmpty();
  }

  @Test
  void every_sign_and_state_a_rule_reads_has_a_point() {
    List<String> without = new ArrayList<>();
    for (RuleText rule : ENGINE.rules()) {
      for (PartKind kind : PartKind.values()) {
        Set<String> components =
            Records.components(kind.recordType()).stream()
                .map(one -> one.getName())
                .collect(Collectors.toSet());
        for (String name : rule.conditionsOn(kind.recordType())) {
          boolean hasPoint =
              TABLES.points().of(kind).stream()
                  .anyMatch(point -> point.ofPart() && point.property().name().equals(name));
          if (components.contains(name) && !hasPoint) {
            without.add(rule.id() + " " + kind.id() + "." + name);
          }
        }
      }
    }
    assertThat(without).isEmpty();
  }

  /** Without rules of its own a part would go back whatever is found on it. */
  @ParameterizedTest
  @EnumSource(PartKind.class)
  void every_kind_of_part_has_rules_and_points(PartKind kind) {
    assertThat(rulesOf(kind.id())).isNotEmpty();
    assertThat(TABLES.points().of(kind)).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void a_cause_only_asks_for_a_look_or_a_measurement(Written rule) {
    if (rule.folder().equals("cause")) {
      assertThat(rule.verdict()).matches("verdict\\.(lookAt|measureAgain)\\(.*");
    }
  }

  private static Subject blank(PartKind kind, Station station) {
    return new Subject(
        Optional.empty(),
        AxleKind.UNKNOWN,
        Layout.UNKNOWN,
        kind.blank(Tag.asFound(LEFT.place(kind, station))));
  }

  static Stream<String> folders() {
    return Tables.components().stream();
  }

  private static String owner(Point point) {
    return point.ofPart() ? "" : "." + point.owner().name().toLowerCase(Locale.ROOT);
  }

  /** By a rule, by a limit for its reading, or by the selector of a limit. */
  private static boolean isRead(Point point) {
    String name = point.property().name();
    return limits().stream()
            .filter(limit -> limit.part() == point.part())
            .anyMatch(limit -> limit.property().equals(name) || asksFor(limit, point))
        || ENGINE.rules().stream().anyMatch(rule -> isReadBy(rule, point))
        || decidesParts(point);
  }

  /** Whether which parts a brake has hangs on it. */
  private static boolean decidesParts(Point point) {
    return point.owner() == Owner.LAYOUT
        && point.property().isState()
        && Stream.of(Layout.class.getRecordComponents())
                .filter(one -> one.getName().equals(point.property().name()))
                .flatMap(one -> Stream.of(one.getType().getEnumConstants()))
                .map(state -> Records.with(Layout.UNKNOWN, point.property().name(), state))
                .map(layout -> layout.expectedParts(LEFT, Scope.CAMSHAFT_OUT))
                .distinct()
                .count()
            > 1;
  }

  private static boolean asksFor(Limit limit, Point point) {
    String attribute = (point.ofPart() ? "part." : "layout.") + point.property().name();
    return limit.appliesTo().matches(".*" + Pattern.quote(attribute) + "[.=].*")
        || limit.written().contains(attribute + ".");
  }

  private static boolean isReadBy(RuleText rule, Point point) {
    List<String> names =
        rule.conditionsOn(point.ofPart() ? point.part().recordType() : Brake.class);
    String asked = point.owner() == Owner.VEHICLE ? "automaticAdjuster" : point.property().name();
    return names.contains(asked)
        || rule.text().contains("\"" + point.id() + "\"")
        || (isArmLength(point) && rule.text().contains(AxleMatter.ARM_LENGTH.name()));
  }

  /** The one measurement that the engine itself compares across the axle. */
  private static boolean isArmLength(Point point) {
    return point.part() == PartKind.SLACK_ADJUSTER && point.property().name().equals("armLength");
  }

  private static List<Limit> limits() {
    return TABLES.limits().rows().map(LimitRow::limit).toList();
  }

  private static Stream<Written> rulesOf(String folder) {
    return RULE
        .matcher(drl(folder))
        .results()
        .map(found -> written(folder, found))
        .toList()
        .stream();
  }

  private static Written written(String folder, MatchResult found) {
    return new Written(
        folder, found.group(1), Integer.parseInt(found.group(2)), found.group(3), found.group(4));
  }

  private static String drl(String folder) {
    return Tables.open(Tables.file(folder, "drl")).map(RuleBaseTest::text).orElse("");
  }

  private static String text(InputStream file) {
    try (file) {
      return new String(file.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Stream<String> found(String text, String regex) {
    return Pattern.compile(regex).matcher(text).results().map(one -> one.group(1));
  }

  private static long count(String text, String part) {
    return Pattern.compile(Pattern.quote(part)).matcher(text).results().count();
  }
}
