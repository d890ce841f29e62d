package org.brakerules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.internal.engine.RuleEngine;
import org.brakerules.internal.engine.RuleText;
import org.brakerules.internal.fact.Brake;
import org.brakerules.internal.table.LimitRow;
import org.brakerules.internal.table.Point;
import org.brakerules.internal.table.Tables;
import org.brakerules.limit.Limit;
import org.brakerules.model.decision.Source;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.Sign;
import org.brakerules.model.part.Tag;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.reading.Station;
import org.brakerules.random.Records;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The rule base itself: every rule, limit, point and source in its place and of some use. */
class RuleBaseTest {

  private static final Tables TABLES = Tables.load();
  private static final RuleEngine ENGINE = RuleEngine.load(TABLES);
  private static final Pattern RULE =
      Pattern.compile("(?m)^rule \"([A-Z-]+)-(\\d{3}) ([^\"]+)\"$(.*?)^end$", Pattern.DOTALL);
  private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"");

  /** One rule as its file has it. */
  record Written(PartKind folder, String prefix, int number, String title, String body) {

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
    return Stream.of(PartKind.values()).flatMap(RuleBaseTest::rulesOf);
  }

  @Test
  void every_rule_in_the_files_is_in_the_engine_and_no_other() {
    assertThat(ENGINE.rules().stream().map(RuleText::id))
        .containsExactlyInAnyOrderElementsOf(rules().map(Written::id).toList())
        .doesNotHaveDuplicates()
        .hasSizeGreaterThan(60);
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
    assertThat(rule.prefix()).isEqualTo(rule.folder().id().toUpperCase(Locale.ROOT));
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
  @MethodSource("foldersWithRules")
  void the_rules_of_a_file_ascend_in_steps_of_ten(PartKind folder) {
    List<Integer> numbers = rulesOf(folder).map(Written::number).toList();
    assertThat(numbers).isSorted().doesNotHaveDuplicates().allMatch(number -> number % 10 == 0);
  }

  @ParameterizedTest
  @MethodSource("foldersWithRules")
  void a_file_holds_as_many_rules_as_the_test_can_read(PartKind folder) {
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
    for (Limit limit : limits()) {
      TABLES.points().of(limit.part()).stream()
          .filter(point -> point.property().name().equals(limit.property()))
          .forEach(point -> assertThat(point.at()).as("%s", limit.id()).isEqualTo(limit.station()));
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
                    .isEqualTo(
                        point.part().id()
                            + (point.ofLayout() ? ".layout." : ".")
                            + point.property().idName()));
  }

  @Test
  void every_source_is_cited_and_every_citation_is_known() {
    Stream<Source> ofRules = ENGINE.rules().stream().flatMap(rule -> rule.sources().stream());
    Stream<Source> ofLimits = limits().stream().map(Limit::source);
    Stream<Source> ofCautions =
        TABLES.cautions().due(Scope.CAMSHAFT_OUT).stream().flatMap(one -> one.source().stream());
    List<Source> cited = Stream.of(ofRules, ofLimits, ofCautions).flatMap(one -> one).toList();
    assertThat(cited.stream().map(Source::id).distinct())
        .containsExactlyInAnyOrderElementsOf(TABLES.sources().ids());
  }

  @Test
  void every_point_is_read_by_a_rule_or_a_limit() {
    assertThat(TABLES.points().points().stream().filter(point -> !isRead(point)).map(Point::id))
        .isEmpty();
  }

  @Test
  void every_sign_and_state_a_rule_reads_of_its_own_part_has_a_point() {
    List<String> without = new ArrayList<>();
    for (RuleText rule : ENGINE.rules()) {
      PartKind kind = PartKind.byId(rule.component()).orElseThrow();
      Set<String> components =
          Records.components(kind.recordType()).stream()
              .map(one -> one.getName())
              .collect(Collectors.toSet());
      for (String name : rule.conditionsOn(kind.recordType())) {
        boolean hasPoint =
            TABLES.points().of(kind).stream()
                .anyMatch(point -> !point.ofLayout() && point.property().name().equals(name));
        if (components.contains(name) && !hasPoint) {
          without.add(rule.id() + " " + name);
        }
      }
    }
    assertThat(without).isEmpty();
  }

  @Test
  void a_part_no_rule_speaks_of_fires_nothing_whatever_is_seen_on_it() {
    List<PartKind> silent =
        Stream.of(PartKind.values())
            .filter(
                kind ->
                    ENGINE.rules().stream()
                        .noneMatch(
                            rule -> rule.text().contains(kind.recordType().getSimpleName() + "(")))
            .toList();
    assertThat(silent).contains(PartKind.HOSE);
    for (PartKind kind : silent) {
      for (Station station : kind.stations()) {
        Part part = everySignSeen(kind, station);
        assertThat(ENGINE.fire(List.of(part))).as("%s", part.place()).isEmpty();
      }
    }
  }

  static Stream<PartKind> foldersWithRules() {
    return Stream.of(PartKind.values())
        .filter(kind -> Tables.open(Tables.file(kind, "drl")).isPresent());
  }

  private static Part everySignSeen(PartKind kind, Station station) {
    Part blank = kind.blank(Tag.asFound(WheelEndPath.of(2, Side.LEFT).place(kind, station)));
    return Records.mapped(
        blank, (component, old) -> component.getType() == Sign.class ? Sign.SEEN : old);
  }

  private static boolean isRead(Point point) {
    String name = point.property().name();
    boolean byLimit =
        limits().stream()
            .anyMatch(
                limit ->
                    point.ofLayout()
                        ? limit.part() == point.part()
                            && limit.appliesTo().contains("layout." + name + "=")
                        : limit.part() == point.part() && limit.property().equals(name));
    return byLimit
        || ENGINE.rules().stream()
            .anyMatch(
                rule ->
                    rule.conditionsOn(point.ofLayout() ? Brake.class : point.part().recordType())
                            .contains(name)
                        || rule.text().contains("\"" + point.id() + "\""));
  }

  private static List<Limit> limits() {
    return TABLES.limits().rows().map(LimitRow::limit).toList();
  }

  private static Stream<Written> rulesOf(PartKind folder) {
    return RULE
        .matcher(drl(folder))
        .results()
        .map(found -> written(folder, found))
        .toList()
        .stream();
  }

  private static Written written(PartKind folder, MatchResult found) {
    return new Written(
        folder, found.group(1), Integer.parseInt(found.group(2)), found.group(3), found.group(4));
  }

  private static String drl(PartKind folder) {
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
