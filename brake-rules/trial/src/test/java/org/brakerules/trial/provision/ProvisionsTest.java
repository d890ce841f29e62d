package org.brakerules.trial.provision;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Collection;
import java.util.List;
import org.brakerules.BrakeRules;
import org.brakerules.Rule;
import org.brakerules.limit.Limit;
import org.brakerules.trial.RuleBaseFolder;
import org.brakerules.trial.provision.Provision.Kind;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Everything a verdict can depend on is read from the rule base of this project. */
class ProvisionsTest {

  private static List<Provision> provisions = List.of();

  @BeforeAll
  static void readTheRuleBase() throws IOException {
    try (RuleBaseFolder folder = RuleBaseFolder.ofThisArtifact()) {
      provisions = Provisions.in(folder.path());
    }
  }

  @Test
  void everyRuleAndLimitIsThereAndNoIdTwice() {
    assertThat(idsOf(Kind.RULE))
        .containsExactlyInAnyOrderElementsOf(
            BrakeRules.standard().rules().stream().map(Rule::id).toList());
    assertThat(idsOf(Kind.LIMIT))
        .containsExactlyInAnyOrderElementsOf(
            BrakeRules.standard().limits().stream().map(Limit::id).distinct().toList());
    assertThat(idsOf(Kind.RULE_SET)).containsExactly("quebec", "us-federal", "us-virginia");
    assertThat(provisions).extracting(Provision::id).doesNotHaveDuplicates();
  }

  @Test
  void aRuleSetIsWhatItAsksOfAVehicleAndHowItHoldsLimits() {
    assertThat(find("us-virginia"))
        .isEqualTo(
            new Provision(
                Kind.RULE_SET,
                "us-virginia",
                "",
                List.of(
                    "automatic adjusters from 1994-10-20",
                    "chamber.applied-stroke.max less than | source VIRGINIA-19VAC30-70-440#D.2")));
  }

  @Test
  void aRuleIsItsConditionsItsVerdictAndItsSources() {
    assertThat(find("DRUM-010"))
        .isEqualTo(
            new Provision(
                Kind.RULE,
                "DRUM-010",
                "drum",
                List.of(
                    "when BeyondLimit( limit == \"drum.diameter.max\", $wheelEnd : wheelEnd )",
                    "when $part : Drum( wheelEnd == $wheelEnd )",
                    "then verdict.replace( $part )",
                    "source US-ARMY-TM-9-2330-326-14-P#P0325",
                    "source COMMON-PRACTICE")));
  }

  @Test
  void aLimitIsAllItsRowsWithoutTheirNotes() {
    assertThat(find("drum.taper.max"))
        .isEqualTo(
            new Provision(
                Kind.LIMIT,
                "drum.taper.max",
                "drum.taper",
                List.of(
                    "comparison at most | value 0.010 in | methods drum-gauge;bore-gauge"
                        + " | source US-ARMY-TM-9-2330-384-14-P#5-2")));
    assertThat(find("drum.diameter.max").lines()).hasSizeGreaterThan(1);
  }

  @Test
  void aPointIsItsRowWithoutInstrumentAndHow() {
    assertThat(find("drum.score-depth"))
        .isEqualTo(
            new Provision(
                Kind.POINT,
                "drum.score-depth",
                "drum.scoreDepth",
                List.of(
                    "needed-from drum-off | applies-to part.condition=as-found; part.scored=seen"
                        + " | needed with-limit | brake at-rest | finds fact")));
  }

  @Test
  void aSourceIsItsStandingAndTheRuleSetWhoseLawItIs() {
    assertThat(find("QUEBEC-C-24.2-R-32").lines())
        .containsExactly("standing law | rule-set quebec");
    assertThat(find("COMMON-PRACTICE").lines())
        .containsExactly("standing common practice, no source");
  }

  @Test
  void aRuleSetIsWhatItAsksOfAVehicle() {
    assertThat(find("us-federal").lines())
        .containsExactly("test pressure 80 psi to 90 psi", "automatic adjusters from 1994-10-20");
  }

  private static Collection<String> idsOf(Kind kind) {
    return provisions.stream()
        .filter(provision -> provision.kind() == kind)
        .map(Provision::id)
        .toList();
  }

  private static Provision find(String id) {
    return provisions.stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
  }
}
