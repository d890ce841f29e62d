package org.brakerules.harness.vehicle;

import java.util.Locale;
import java.util.Optional;
import org.brakerules.harness.report.Page;
import org.brakerules.harness.report.Palette;
import org.brakerules.harness.report.Wording;
import org.brakerules.model.quantity.Length;
import org.brakerules.vehicle.AxleMatch;
import org.brakerules.vehicle.AxleStatus;
import org.brakerules.vehicle.BrakeCount;
import org.brakerules.vehicle.CriterionStatus;
import org.brakerules.vehicle.VehicleStatus;

/** What axles and vehicle come to, as text. */
public final class VehicleReport {

  private static final int LABEL = 12;

  private final Page page = new Page(new Palette(false));

  private VehicleReport() {}

  /** The report of one vehicle. */
  public static String of(VehicleStatus status) {
    VehicleReport report = new VehicleReport();
    report.write(status);
    return report.page.toString();
  }

  private void write(VehicleStatus status) {
    String reference = status.reference().isEmpty() ? "" : " " + status.reference();
    page.paragraph(0, "Axles and vehicle of brake job" + reference);
    page.labelled(2, "Inspected", LABEL, status.date().toString());
    page.labelled(2, "Rule set", LABEL, status.ruleSet().id());
    page.labelled(
        2,
        "Note",
        LABEL,
        "This repeats what published criteria say. It is no official ruling; each criterion names"
            + " whom to ask.");
    status.axles().forEach(this::axle);
    chapter("Brakes, one by one");
    status.brakes().forEach(this::brake);
    chapter("Published criteria");
    status.criteria().forEach(this::criterion);
  }

  private void chapter(String heading) {
    page.gap();
    page.paragraph(0, heading);
    page.paragraph(0, "=".repeat(heading.length()));
  }

  private void axle(AxleStatus axle) {
    chapter(axle.path() + ", " + inWords(axle.kind()));
    axle.matches().forEach(this::match);
    page.labelled(2, "stroke", 16, strokes(axle));
    page.labelled(2, "free stroke", 16, strokes(axle.leftFree(), axle.rightFree()));
    axle.givesWay().ifPresent(words -> page.labelled(2, "look", 16, words));
  }

  private void match(AxleMatch match) {
    String words =
        switch (match.likeness()) {
          case ALIKE -> "alike: " + match.left();
          case UNLIKE -> "UNLIKE: " + match.left() + " left, " + match.right() + " right";
          case NOT_STATED ->
              "not known: "
                  + stated(match.left())
                  + " left, "
                  + stated(match.right())
                  + " right; state it of both ends";
        };
    page.labelled(2, inWords(match.matter()), 16, words);
  }

  private static String stated(String what) {
    return what.isEmpty() ? "not stated" : what;
  }

  private static String strokes(Optional<Length> left, Optional<Length> right) {
    return left.map(Object::toString).orElse("not read")
        + " left, "
        + right.map(Object::toString).orElse("not read")
        + " right";
  }

  private static String strokes(AxleStatus axle) {
    return strokes(axle.leftStroke(), axle.rightStroke())
        + axle.strokesApart().map(apart -> ", " + apart + " apart").orElse("");
  }

  private void brake(BrakeCount brake) {
    String words =
        switch (brake.stroke()) {
          case WITHIN -> "stroke inside its limit";
          case BEYOND -> "stroke " + brake.beyond().orElseThrow() + " beyond its limit";
          case OPEN -> "stroke open";
        };
    String also =
        brake.otherwise().isEmpty()
            ? ""
            : "; the law fails " + String.join(", ", brake.otherwise());
    page.labelled(2, brake.wheelEnd().toString(), 24, words + also);
  }

  private void criterion(CriterionStatus criterion) {
    page.gap();
    page.paragraph(2, criterion.title() + ": " + inWords(criterion.answer()));
    line("Says", criterion.says() + " [" + Wording.source(criterion.source()) + "]");
    line("Here", criterion.finding());
    criterion.open().forEach(what -> line("Open", what));
    line("Ask", criterion.ask());
  }

  private void line(String label, String words) {
    page.labelled(4, label, 6, words);
  }

  private static String inWords(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
