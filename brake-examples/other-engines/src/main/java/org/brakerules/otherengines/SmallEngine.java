package org.brakerules.otherengines;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.brakerules.internal.engine.Said;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.part.CamRoller;
import org.brakerules.model.part.Camshaft;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Presence;
import org.brakerules.model.part.Sign;
import org.jeasy.rules.api.Facts;
import org.jeasy.rules.api.Rule;
import org.jeasy.rules.api.Rules;
import org.jeasy.rules.core.DefaultRulesEngine;
import org.jeasy.rules.core.RuleBuilder;

/**
 * The common subset in a small general-purpose rule engine: the rules of camshaft and cam roller
 * that look at one part and at nothing else, with their conditions in Java. They are taken from the
 * rule files by hand; the comparison refuses to run where the answers are not the same.
 */
final class SmallEngine {

  private static final String PART = "part";
  private static final String SAID = "said";

  private static final List<Rule> CAMSHAFT =
      List.of(
          on(
              Camshaft.class,
              "CAMSHAFT-030",
              Verdict.REPLACE,
              part -> part.ringGrooveRounded() == Sign.SEEN),
          on(
              Camshaft.class,
              "CAMSHAFT-040",
              Verdict.REPLACE,
              part ->
                  part.adjusterMovesFirst() == Sign.SEEN && part.condition() == Condition.AS_FOUND),
          on(
              Camshaft.class,
              "CAMSHAFT-050",
              Verdict.REPLACE,
              part ->
                  part.splineTwisted() == Sign.SEEN
                      || part.splineChipped() == Sign.SEEN
                      || part.splineCracked() == Sign.SEEN),
          on(
              Camshaft.class,
              "CAMSHAFT-090",
              Verdict.MEASURE_AGAIN,
              part -> part.adjusterMovesFirst() == Sign.SEEN && part.condition() == Condition.NEW),
          on(
              Camshaft.class,
              "CAMSHAFT-130",
              Verdict.REPLACE,
              part ->
                  part.journalWorn() == Sign.SEEN
                      || part.journalStepped() == Sign.SEEN
                      || part.journalPitted() == Sign.SEEN),
          on(
              Camshaft.class,
              "CAMSHAFT-140",
              Verdict.REPLACE,
              part -> part.sealGroove() == Sign.SEEN),
          on(
              Camshaft.class,
              "CAMSHAFT-150",
              Verdict.REPLACE,
              part ->
                  part.flat() == Sign.SEEN
                      || part.groove() == Sign.SEEN
                      || part.spalling() == Sign.SEEN),
          on(Camshaft.class, "CAMSHAFT-160", Verdict.REPLACE, part -> part.dents() == Sign.SEEN),
          on(Camshaft.class, "CAMSHAFT-180", Verdict.REPLACE, part -> part.crack() == Sign.SEEN),
          on(Camshaft.class, "CAMSHAFT-190", Verdict.CLEAN, part -> part.rust() == Sign.SEEN),
          on(Camshaft.class, "CAMSHAFT-200", Verdict.LOOK_AT, part -> part.rust() == Sign.SEEN),
          on(
              Camshaft.class,
              "CAMSHAFT-210",
              Verdict.REPLACE,
              part -> part.pitsAfterCleaning() == Sign.SEEN),
          on(Camshaft.class, "CAMSHAFT-220", Verdict.HOLD, part -> part.wearToNose() == Sign.SEEN),
          on(
              Camshaft.class,
              "CAMSHAFT-230",
              Verdict.HOLD,
              part -> part.rollerPastNose() == Sign.SEEN),
          on(
              Camshaft.class,
              "CAMSHAFT-240",
              Verdict.REPLACE,
              part -> part.wearToNose() == Sign.SEEN || part.rollerPastNose() == Sign.SEEN),
          on(
              Camshaft.class,
              "CAMSHAFT-340",
              Verdict.HOLD,
              part -> part.rollerOutOfCrook() == Sign.SEEN),
          on(Camshaft.class, "CAMSHAFT-350", Verdict.REPLACE, part -> part.bent() == Sign.SEEN),
          on(
              Camshaft.class,
              "CAMSHAFT-360",
              Verdict.REPLACE,
              part -> part.wobblesInNewBushings() == Sign.SEEN),
          on(
              Camshaft.class,
              "CAMSHAFT-380",
              Verdict.MEASURE_AGAIN,
              part -> part.turnsFreely() == Sign.NOT_SEEN),
          on(
              Camshaft.class,
              "CAMSHAFT-400",
              Verdict.REPLACE,
              part -> part.presence() == Presence.MISSING));

  private static final List<Rule> CAM_ROLLER =
      List.of(
          on(
              CamRoller.class,
              "CAM-ROLLER-010",
              Verdict.REPLACE,
              part ->
                  part.flat() == Sign.SEEN
                      || part.groove() == Sign.SEEN
                      || part.pit() == Sign.SEEN
                      || part.spalling() == Sign.SEEN),
          on(
              CamRoller.class,
              "CAM-ROLLER-020",
              Verdict.REPLACE,
              part -> part.stuckAfterCleaning() == Sign.SEEN),
          on(
              CamRoller.class,
              "CAM-ROLLER-030",
              Verdict.REPLACE,
              part -> part.neckedEnds() == Sign.SEEN),
          on(
              CamRoller.class,
              "CAM-ROLLER-040",
              Verdict.REPLACE,
              part -> part.looseInPocket() == Sign.SEEN),
          on(
              CamRoller.class,
              "CAM-ROLLER-060",
              Verdict.CLEAN,
              part -> part.seizedAsFound() == Sign.SEEN),
          on(
              CamRoller.class,
              "CAM-ROLLER-070",
              Verdict.LOOK_AT,
              part -> part.seizedAsFound() == Sign.SEEN),
          on(
              CamRoller.class,
              "CAM-ROLLER-130",
              Verdict.REPLACE,
              part -> part.presence() == Presence.MISSING),
          on(
              CamRoller.class,
              "CAM-ROLLER-140",
              Verdict.ADJUST,
              part -> part.cocked() == Sign.SEEN));

  private final DefaultRulesEngine engine = new DefaultRulesEngine();
  private final Rules camshaft = new Rules(new HashSet<>(CAMSHAFT));
  private final Rules camRoller = new Rules(new HashSet<>(CAM_ROLLER));

  /** The ids of the rules. */
  static Set<String> ids() {
    Set<String> ids = new HashSet<>();
    Stream.of(CAMSHAFT, CAM_ROLLER).flatMap(List::stream).forEach(rule -> ids.add(rule.getName()));
    return ids;
  }

  /** Whether there are rules of a part here. */
  static boolean speaksOf(Part part) {
    return part instanceof Camshaft || part instanceof CamRoller;
  }

  /** What the rules say of camshafts and cam rollers among these parts. */
  Set<Said> fire(List<Part> parts) {
    Set<Said> said = new HashSet<>();
    for (Part part : parts) {
      if (part instanceof Camshaft) {
        fire(camshaft, part, said);
      } else if (part instanceof CamRoller) {
        fire(camRoller, part, said);
      }
    }
    return said;
  }

  private void fire(Rules rules, Part part, Set<Said> said) {
    Facts facts = new Facts();
    facts.put(PART, part);
    facts.put(SAID, said);
    engine.fire(rules, facts);
  }

  private static <P extends Part> Rule on(
      Class<P> type, String id, Verdict verdict, Predicate<P> holds) {
    return new RuleBuilder()
        .name(id)
        .when(facts -> holds.test(type.cast(facts.<Object>get(PART))))
        .then(
            facts -> {
              Set<Said> said = facts.get(SAID);
              Part part = facts.get(PART);
              said.add(new Said(id, verdict, part.place()));
            })
        .build();
  }
}
