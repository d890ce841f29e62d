package org.brakerules.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.brakerules.trial.SmallRuleBase.bothEnds;
import static org.brakerules.trial.SmallRuleBase.camshaft;
import static org.brakerules.trial.SmallRuleBase.oneEnd;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.brakerules.trial.coverage.CaseName;
import org.brakerules.trial.coverage.ConditionCoverage;
import org.brakerules.trial.coverage.Coverage;
import org.brakerules.trial.coverage.ListedItem;
import org.brakerules.trial.coverage.RuleCoverage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a few cases show of a small rule base, and what they leave open. */
class CoverageTrialTest {

  private static final String SHAFT = "{ \"part\": \"camshaft\" }";
  private static final String RUSTY = "{ \"part\": \"camshaft\", \"rust\": \"seen\" }";

  private static final TrialCase CRACKED = camshaft("cracked", ", \"crack\": \"seen\"");
  private static final TrialCase BENT = camshaft("bent", ", \"bent\": \"seen\"");
  private static final TrialCase BOTH =
      camshaft("cracked and bent", ", \"crack\": \"seen\", \"bent\": \"seen\"");
  private static final TrialCase NEW =
      camshaft("new and bent", ", \"condition\": \"new\", \"bent\": \"seen\"");
  private static final TrialCase SOUND = camshaft("sound", "");
  private static final TrialCase NEW_SOUND = camshaft("new", ", \"condition\": \"new\"");
  private static final TrialCase LOOSE = camshaft("loose", endPlay("0.031 in"));

  @TempDir private Path folder;
  private SmallRuleBase base;

  @BeforeEach
  void write_the_rule_base() throws IOException {
    base = new SmallRuleBase(folder);
  }

  @Test
  void a_case_fires_a_rule_or_comes_near_it_if_all_holds_but_one_condition() throws IOException {
    RuleCoverage rule = rule("CAMSHAFT-010", CRACKED, SOUND, NEW, NEW_SOUND);

    assertThat(names(rule.fires())).containsExactly("cracked");
    assertThat(names(rule.near())).containsExactly("sound", "new and bent");
  }

  @Test
  void an_alternative_is_shown_where_it_alone_holds() throws IOException {
    assertThat(shown("CAMSHAFT-010", CRACKED, BOTH, SOUND, NEW))
        .containsExactly(
            "Camshaft( condition == Condition.AS_FOUND ): [cracked, cracked and bent] [new and bent]",
            "Camshaft( crack == Sign.SEEN ): [cracked] [sound]",
            "Camshaft( bent == Sign.SEEN ): [] [sound]");
  }

  @Test
  void a_join_fails_alone_only_where_there_is_a_part_across_the_axle() throws IOException {
    TrialCase partner =
        bothEnds("partner", "{ \"part\": \"camshaft\"" + endPlay("0.031 in") + " }", SHAFT);

    assertThat(shown("CAMSHAFT-020", LOOSE, partner, SOUND))
        .containsExactly(
            "BeyondLimit( limit == \"camshaft.end-play.max\" ): [loose, partner] [sound]",
            "Camshaft( wheelEnd == $wheelEnd ): [loose, partner] [] beside [partner]");
  }

  @Test
  void a_condition_is_shown_to_fail_first_where_it_holds_at_no_other_end() throws IOException {
    String cracked = "{ \"part\": \"camshaft\", \"crack\": \"seen\" }";
    String newAndCracked =
        "{ \"part\": \"camshaft\", \"condition\": \"new\", \"crack\": \"seen\" }";
    TrialCase oneCracked = bothEnds("one cracked", cracked, SHAFT);
    TrialCase oneNew = bothEnds("one new", newAndCracked, SHAFT);

    assertThat(shown("CAMSHAFT-010", oneCracked, oneNew, SOUND))
        .containsExactly(
            "Camshaft( condition == Condition.AS_FOUND ): [one cracked] [one new]",
            "Camshaft( crack == Sign.SEEN ): [one cracked] [sound, one new] beside [one cracked]",
            "Camshaft( bent == Sign.SEEN ): [] [sound, one new] beside [one cracked]");
  }

  @Test
  void a_case_of_another_component_is_near_only_if_it_names_the_rule() throws IOException {
    TrialCase elsewhere = camshaft("elsewhere", "").beside("hose");
    TrialCase naming = camshaft("naming", "").naming("CAMSHAFT-010").beside("hose");

    assertThat(names(rule("CAMSHAFT-010", elsewhere, SOUND, naming).near()))
        .containsExactly("naming", "sound");
  }

  @Test
  void a_pattern_under_not_holds_where_there_is_no_such_part() throws IOException {
    TrialCase alone = oneEnd("alone", RUSTY);
    TrialCase withDrum = oneEnd("with drum", RUSTY + ", { \"part\": \"drum\" }");

    assertThat(shown("CAMSHAFT-030", alone, withDrum, SOUND))
        .containsExactly(
            "Camshaft( rust == Sign.SEEN ): [alone] [sound]",
            "not Drum( wheelEnd == $wheelEnd ): [alone] [with drum]");
  }

  @Test
  void a_case_that_calls_itself_near_and_fails_in_two_conditions_is_told() throws IOException {
    TrialCase claims = camshaft("claims", ", \"condition\": \"new\"").naming("CAMSHAFT-010");

    assertThat(names(rule("CAMSHAFT-010", claims).saidNear())).containsExactly("claims");
    assertThat(rule("CAMSHAFT-010", claims).near()).isEmpty();
  }

  @Test
  void cases_of_the_own_component_are_named_first() throws IOException {
    TrialCase elsewhere = camshaft("elsewhere", ", \"crack\": \"seen\"").beside("hose");

    assertThat(rule("CAMSHAFT-010", elsewhere, CRACKED).fires())
        .containsExactly(new CaseName("camshaft", "cracked"), new CaseName("hose", "elsewhere"));
  }

  @Test
  void sides_of_a_limit_are_those_of_the_row_that_is_in_force() throws IOException {
    Coverage coverage =
        coverage(
            SOUND,
            LOOSE,
            camshaft("at the limit", endPlay("0.762 mm")),
            camshaft("tight", endPlay("0.010 in")));

    assertThat(sides(coverage))
        .containsExactly(
            "camshaft.end-play.max [axle.kind=drive]: INSIDE [tight], ON [at the limit],"
                + " BEYOND [loose], NO_READING [sound]",
            "camshaft.end-play.max [axle.kind=steer]: INSIDE [], ON [], BEYOND [], NO_READING []",
            "camshaft.backlash.max: INSIDE [], ON [], BEYOND [], NO_READING [],"
                + " NO_FIGURE [sound, loose, at the limit, tight]");
  }

  @Test
  void a_job_made_for_a_row_counts_for_that_row_alone() throws IOException {
    Coverage none = coverage();
    Coverage made =
        CoverageTrial.of(
            folder,
            List.of(),
            Map.of(
                TrialRules.in(folder).base().tables().limits().rows().toList().get(0).limit(),
                List.of(LOOSE.job())));

    assertThat(none.limits().get(0).sides()).noneMatch(side -> side.isShown());
    assertThat(made.limits().get(0).sides()).filteredOn(side -> side.made() == 1).hasSize(1);
    assertThat(made.limits().get(2).sides()).noneMatch(side -> side.isShown());
  }

  @Test
  void a_source_shows_what_rests_on_each_of_its_clauses() throws IOException {
    Stream<String> clauses =
        coverage().sources().stream()
            .flatMap(
                source ->
                    source.clauses().stream()
                        .map(
                            one ->
                                "%s %s: %s %s %s"
                                    .formatted(
                                        source.id(),
                                        one.clause(),
                                        one.rules(),
                                        one.limits(),
                                        one.others())));

    assertThat(clauses)
        .containsExactly(
            "COMMON-PRACTICE : [CAMSHAFT-010, CAMSHAFT-030]"
                + " [camshaft.end-play.max [axle.kind=steer], camshaft.backlash.max] []",
            "MANUAL 4-30: [CAMSHAFT-010] [] []",
            "MANUAL 4-31: [CAMSHAFT-020] [camshaft.end-play.max [axle.kind=drive]] []",
            "LAW 1: [] [] [rule set here]",
            "LAW 2: [] [] [caution chock]");
  }

  @Test
  void a_point_shows_who_reads_it() throws IOException {
    Stream<String> points =
        coverage().points().stream()
            .map(
                one ->
                    "%s: %s %s %s, %s"
                        .formatted(
                            one.id(), one.rules(), one.limits(), one.askedBy(), one.needed()));

    assertThat(points)
        .containsExactly(
            "camshaft.crack: [CAMSHAFT-010] [] [], always, from scope camshaft-out",
            "camshaft.end-play: [] [camshaft.end-play.max [axle.kind=drive],"
                + " camshaft.end-play.max [axle.kind=steer]] [],"
                + " where a limit is in force, from scope shoes-off",
            "camshaft.flat: [] [] [CAMSHAFT-030],"
                + " only when a rule asks for it, from scope shoes-off",
            "camshaft.dents: [] [] [], always, from scope shoes-off");
  }

  @Test
  void what_is_open_is_told_and_of_a_rule_that_never_fires_each_condition() throws IOException {
    assertThat(open(coverage(CRACKED, BENT, SOUND, NEW, LOOSE)))
        .containsExactly(
            "condition-fails CAMSHAFT-020 Camshaft( wheelEnd == $wheelEnd )",
            "rule-fires CAMSHAFT-030",
            "condition-holds CAMSHAFT-030 Camshaft( rust == Sign.SEEN )",
            "condition-holds CAMSHAFT-030 not Drum( wheelEnd == $wheelEnd )",
            "condition-fails CAMSHAFT-030 not Drum( wheelEnd == $wheelEnd )",
            "limit-inside camshaft.end-play.max [axle.kind=drive]",
            "limit-on camshaft.end-play.max [axle.kind=drive]",
            "limit-applies camshaft.end-play.max [axle.kind=steer]",
            "limit-inside camshaft.backlash.max",
            "limit-on camshaft.backlash.max",
            "limit-beyond camshaft.backlash.max",
            "limit-no-reading camshaft.backlash.max",
            "point camshaft.dents",
            "source UNUSED");
  }

  @Test
  void what_is_listed_with_a_reason_may_stay_open_and_what_is_not_open_need_not_be_listed()
      throws IOException {
    base.write(
        "coverage-open.csv",
        """
        what,id,reason
        point,camshaft.dents,for the eye of the technician
        rule-fires,CAMSHAFT-010,never seen
        """);
    Coverage coverage = coverage(CRACKED);

    assertThat(open(coverage)).doesNotContain("point camshaft.dents");
    assertThat(coverage.mayStayOpen())
        .containsExactly(
            new ListedItem("point", "camshaft.dents", "for the eye of the technician"));
    assertThat(coverage.notNeeded())
        .containsExactly(new ListedItem("rule-fires", "CAMSHAFT-010", "never seen"));
  }

  @Test
  void a_point_in_unread_has_its_reason_there_and_one_that_is_read_is_no_row_too_many()
      throws IOException {
    base.write(
        "unread.csv",
        "id,reason\ncamshaft.dents,for the eye\ncamshaft.crack,read by a fact\nhose,no rule yet\n");
    Coverage coverage = coverage(CRACKED);

    assertThat(open(coverage)).doesNotContain("point camshaft.dents");
    assertThat(coverage.mayStayOpen())
        .containsExactly(new ListedItem("point", "camshaft.dents", "for the eye"));
    assertThat(coverage.notNeeded()).isEmpty();
  }

  @Test
  void a_row_without_a_reason_is_refused_with_its_line() throws IOException {
    base.write("coverage-open.csv", "what,id,reason\npoint,camshaft.dents,\n");

    assertThatThrownBy(this::coverage)
        .isInstanceOf(IOException.class)
        .hasMessage("coverage-open.csv line 2: \"reason\" is empty; it must be stated.");
  }

  @Test
  void sources_of_a_component_are_those_its_rules_and_limits_rest_on() throws IOException {
    assertThat(coverage().of(List.of("camshaft")).sources())
        .extracting(source -> source.id())
        .containsExactly("COMMON-PRACTICE", "MANUAL");
    assertThat(coverage().of(List.of("hose")).open()).isEmpty();
  }

  private Coverage coverage(TrialCase... cases) throws IOException {
    return CoverageTrial.of(folder, List.of(cases), Map.of());
  }

  private RuleCoverage rule(String id, TrialCase... cases) throws IOException {
    return coverage(cases).rules().stream()
        .filter(rule -> rule.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** The conditions of a rule, each with the cases in which it holds and in which it fails. */
  private Stream<String> shown(String id, TrialCase... cases) throws IOException {
    return rule(id, cases).conditions().stream().map(CoverageTrialTest::shown);
  }

  private static String shown(ConditionCoverage condition) {
    String beside =
        condition.failsBeside().isEmpty() ? "" : " beside " + names(condition.failsBeside());
    return condition.text()
        + ": "
        + names(condition.holds())
        + " "
        + names(condition.fails())
        + beside;
  }

  private static Stream<String> sides(Coverage coverage) {
    return coverage.limits().stream()
        .map(
            limit ->
                limit.id()
                    + ": "
                    + String.join(
                        ", ",
                        limit.sides().stream()
                            .map(side -> side.side() + " " + names(side.cases()))
                            .toList()));
  }

  private static List<String> open(Coverage coverage) {
    return coverage.open().stream().map(item -> item.what() + " " + item.id()).toList();
  }

  private static List<String> names(List<CaseName> cases) {
    return cases.stream().map(CaseName::name).toList();
  }

  private static String endPlay(String value) {
    return ", \"endPlay\": { \"value\": \"" + value + "\", \"at\": \"spline-end\" }";
  }
}
