package org.brakerules.vehicle;

import org.brakerules.internal.json.AnswerJson;
import org.brakerules.model.decision.Source;

/** Writes the status of a vehicle as JSON, on one line. Every length is a text with its unit. */
public final class VehicleStatusWriter {

  private final AnswerJson out;

  private VehicleStatusWriter(AnswerJson out) {
    this.out = out;
  }

  /** The status of one vehicle. */
  public static String write(VehicleStatus status) {
    return AnswerJson.document(out -> new VehicleStatusWriter(out).vehicle(status));
  }

  private void vehicle(VehicleStatus status) {
    out.header(status.ruleBase(), status.reference(), status.date(), status.ruleSet());
    out.objects("axles", status.axles(), this::axle);
    out.objects("brakes", status.brakes(), this::brake);
    out.objects("criteria", status.criteria(), this::criterion);
  }

  private void axle(AxleStatus axle) {
    out.text("axle", axle.path());
    out.text("kind", axle.kind());
    out.objects("matches", axle.matches(), this::match);
    out.unlessEmpty("leftStroke", axle.leftStroke().map(Object::toString).orElse(""));
    out.unlessEmpty("rightStroke", axle.rightStroke().map(Object::toString).orElse(""));
    out.unlessEmpty("strokesApart", axle.strokesApart().map(Object::toString).orElse(""));
    out.unlessEmpty("leftFreeStroke", axle.leftFree().map(Object::toString).orElse(""));
    out.unlessEmpty("rightFreeStroke", axle.rightFree().map(Object::toString).orElse(""));
    out.unlessEmpty("givesWay", axle.givesWay().orElse(""));
  }

  private void match(AxleMatch match) {
    out.text("matter", match.matter());
    out.text("likeness", match.likeness());
    out.unlessEmpty("left", match.left());
    out.unlessEmpty("right", match.right());
  }

  private void brake(BrakeCount brake) {
    out.text("wheelEnd", brake.wheelEnd().toString());
    out.text("stroke", brake.stroke());
    out.unlessEmpty("beyond", brake.beyond().map(Object::toString).orElse(""));
    out.texts("otherwise", brake.otherwise());
  }

  private void criterion(CriterionStatus criterion) {
    out.text("id", criterion.id());
    out.text("title", criterion.title());
    out.text("answer", criterion.answer());
    out.text("says", criterion.says());
    out.text("finding", criterion.finding());
    out.texts("open", criterion.open());
    out.text("ask", criterion.ask());
    out.object("source", () -> source(criterion.source()));
  }

  private void source(Source source) {
    out.text("id", source.id());
    out.unlessEmpty("clause", source.clause());
    out.text("title", source.title());
    out.text("standing", source.standing());
  }
}
