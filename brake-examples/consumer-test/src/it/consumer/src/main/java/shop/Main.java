package shop;

import java.time.LocalDate;
import org.brakerules.BrakeRules;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Camshaft;
import org.brakerules.model.part.CamshaftBushing;
import org.brakerules.model.part.CamshaftSeal;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.Sign;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Measurement;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Station;

/** Decides the camshaft, a bushing and a seal of one wheel end. */
final class Main {

  private static final WheelEndPath LEFT = WheelEndPath.of("tractor", 2, Side.LEFT);

  private Main() {}

  public static void main(String[] args) {
    BrakeJob job =
        BrakeJob.builder()
            .date(LocalDate.of(2026, 11, 20))
            .ruleSet("us-federal")
            .scope(Scope.CAMSHAFT_OUT)
            .wheelEnd(
                LEFT,
                Layout.of(CamshaftLayout.TUBE).build(),
                Camshaft.asFound(LEFT).crack(Sign.NOT_SEEN).build(),
                bushing("0.030"),
                CamshaftSeal.asFound(LEFT, Station.HEAD_END).build())
            .build();
    for (Decision decision : BrakeRules.standard().decide(job).decisions()) {
      System.out.println(decision.part() + " " + decision.disposition());
    }
  }

  private static CamshaftBushing bushing(String inchesOfPlay) {
    return CamshaftBushing.asFound(LEFT, Station.HEAD_END)
        .radialPlay(
            Measurement.of(
                Length.inches(inchesOfPlay),
                Station.HEAD_END,
                Method.DIAL_INDICATOR_LIFTED_BY_HAND))
        .build();
  }
}
