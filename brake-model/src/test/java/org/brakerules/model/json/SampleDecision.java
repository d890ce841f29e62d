package org.brakerules.model.json;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.brakerules.model.decision.Caution;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.CheckStatus;
import org.brakerules.model.decision.Comparison;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Evidence;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.decision.NextLook;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.decision.RoadAnswer;
import org.brakerules.model.decision.RuleBaseVersion;
import org.brakerules.model.decision.Source;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.layout.AxleMatter;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Contradiction;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Reading;
import org.brakerules.model.reading.Station;

/** A decision with one of everything in it. Its rules and limits are made up. */
final class SampleDecision {

  private static final WheelEndPath LEFT = WheelEndPath.of("tractor", 2, Side.LEFT);
  private static final Place CAMSHAFT = LEFT.place(PartKind.CAMSHAFT);
  private static final Place BUSHING = LEFT.place(PartKind.CAMSHAFT_BUSHING, Station.HEAD_END);
  private static final Source PRACTICE =
      new Source("COMMON-PRACTICE", "", "Common practice", Standing.COMMON_PRACTICE);
  private static final LimitInForce PLAY_LIMIT =
      new LimitInForce(
          "camshaft-bushing.radial-play.max",
          Comparison.AT_MOST,
          Length.parse("0.020 in"),
          "0.020 in",
          new Source("AXLE-MANUAL", "12", "Axle manual", Standing.MAKER));

  private SampleDecision() {}

  static JobDecision full() {
    return new JobDecision(
        new RuleBaseVersion("0.1.0", "00ff"),
        "H-4417",
        LocalDate.of(2026, 11, 20),
        new RuleSet("us-federal"),
        Scope.CAMSHAFT_OUT,
        List.of(camshaft(), bushing()),
        List.of(new NextLook(CAMSHAFT, "camshaft.end-play", List.of(CAMSHAFT))),
        List.of(new Caution("springs", "Cage the spring brake first.", List.of(PRACTICE))));
  }

  static JobDecision empty() {
    return new JobDecision(
        new RuleBaseVersion("0.1.0", "00ff"),
        "",
        LocalDate.of(2026, 11, 20),
        new RuleSet("us-federal"),
        Scope.WHEEL_ON,
        List.of(),
        List.of(),
        List.of());
  }

  private static Decision camshaft() {
    return new Decision(
        CAMSHAFT,
        Disposition.UNDECIDED,
        true,
        RoadAnswer.OPEN,
        List.of(
            new Reason(
                "CAMSHAFT-010",
                "Hand unlike the maker says",
                Verdict.HOLD,
                "The shaft is a \"left\" one.\nThe brake takes a right one.",
                "",
                List.of(
                    new Evidence.Stated(CAMSHAFT, "hand", "left"),
                    new Evidence.Built(LEFT, "camshaftHand", "right")),
                List.of(PRACTICE))),
        List.of(
            new Needed(
                CAMSHAFT,
                "camshaft.end-play",
                Needed.Task.MEASURE,
                "end play of the shaft",
                "missing",
                "dial indicator",
                "Push and pull the shaft.",
                Station.SPLINE_END,
                List.of(Method.DIAL_INDICATOR),
                List.of("after the work"),
                List.of(PLAY_LIMIT),
                Scope.SHOES_OFF),
            new Needed(
                CAMSHAFT,
                "layout.camshaft",
                Needed.Task.STATE,
                "how the camshaft is carried",
                "missing",
                "",
                "",
                Station.WHOLE_PART,
                List.of(),
                List.of(),
                List.of(),
                Scope.WHEEL_ON)),
        List.of(),
        List.of(),
        List.of("camshaft.crack"));
  }

  private static Decision bushing() {
    Reading<Length> over =
        new Reading<>(
            Length.parse("1/32 in"),
            "1/32 in",
            Station.HEAD_END,
            Method.DIAL_INDICATOR,
            Optional.of(Length.parse("0.001 in")),
            Optional.empty(),
            Moment.AFTER_WORK);
    return new Decision(
        BUSHING,
        Disposition.REPLACE,
        false,
        RoadAnswer.SILENT,
        List.of(
            new Reason(
                "CAMSHAFT-BUSHING-010",
                "Radial play over the limit",
                Verdict.REPLACE,
                "Radial play is 1/32 in, over 0.020 in.",
                "Replace both bushings.",
                List.of(
                    new Evidence.Measured(
                        new Check(
                            BUSHING,
                            "radialPlay",
                            PLAY_LIMIT.id(),
                            CheckStatus.BEYOND,
                            Optional.of(PLAY_LIMIT),
                            Optional.of(over),
                            Optional.of(Length.parse("0.01125 in")))),
                    new Evidence.AlsoReplaced(LEFT, PartKind.CAMSHAFT),
                    new Evidence.WasDisturbed(BUSHING),
                    new Evidence.UnlikePartner(LEFT, AxleMatter.CHAMBER_SIZE),
                    new Evidence.ReadingsContradict(
                        BUSHING, Contradiction.JOURNAL_IN_BORE, "1.502 in", "1.501 in")),
                List.of(PLAY_LIMIT.source(), PRACTICE))),
        List.of(),
        List.of(),
        List.of(
            new Check(
                BUSHING,
                "bore",
                "camshaft-bushing.bore.max",
                CheckStatus.NO_LIMIT,
                Optional.empty(),
                Optional.of(over),
                Optional.empty())),
        List.of());
  }
}
