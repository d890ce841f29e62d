package org.brakerules.model.json;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.brakerules.model.job.EarlierLining;
import org.brakerules.model.job.Odometer;
import org.brakerules.model.quantity.Length;

/** Reads how thick linings were at an earlier inspection. */
final class EarlierLiningReader {

  private static final Optional<Length> THICKEST = Optional.of(Length.parse("2 in"));
  private static final String LINING =
      "the path of the lining, such as \"axle2/left/lining/upper\"";
  private static final String ODOMETER = "an odometer, such as \"401200 km\" or \"250000 mi\"";

  private final WheelEndNames wheelEnds;
  private final Values values;
  private final LocalDate inspected;
  private final Once<String> once;

  /**
   * Reads the earlier linings of a job.
   *
   * @param inspected the day of the job, or one far ahead if it could not be read
   */
  EarlierLiningReader(WheelEndNames wheelEnds, Values values, LocalDate inspected) {
    this.wheelEnds = wheelEnds;
    this.inspected = inspected;
    this.values = values;
    this.once = new Once<>(values.problems());
  }

  /** Reads all of them; those with a problem are left out. */
  List<EarlierLining> linings(Optional<Node> field) {
    Entries entries =
        new Entries(
            "an array of earlier linings",
            "a lining as it was: an object with on, date, thickness, odometer and odometerNow",
            values.problems());
    return entries.each(entries.of(field), this::lining);
  }

  private Supplier<EarlierLining> lining(Node node, Fields fields) {
    Optional<String> on = fields.required("on", LINING).flatMap(this::path);
    on.ifPresent(it -> once.add(it, node, "earlier lining of " + it, "one of each lining"));
    Optional<LocalDate> date = fields.required("date", Values.DATE).flatMap(this::date);
    Optional<Length> thickness =
        fields
            .required("thickness", "how thick it was with its unit")
            .flatMap(it -> values.quantity(it, Length.class, THICKEST));
    Optional<Odometer> then = odometer(fields, "odometer");
    Optional<Odometer> now = odometer(fields, "odometerNow");
    return () ->
        new EarlierLining(
            on.orElseThrow(),
            date.orElseThrow(),
            thickness.orElseThrow(),
            then.orElseThrow(),
            now.orElseThrow());
  }

  private Optional<String> path(Node node) {
    Optional<String> path = wheelEnds.path(node, values);
    if (path.filter(it -> !it.matches(".*/lining/(upper|lower)")).isPresent()) {
      values.problems().add(node.spot(), "no lining, \"" + path.get() + "\"", LINING);
    }
    return path;
  }

  private Optional<LocalDate> date(Node node) {
    Optional<LocalDate> day = values.date(node);
    if (day.filter(it -> it.isAfter(inspected)).isPresent()) {
      values
          .problems()
          .add(
              node.spot(),
              "a day after the inspection, \"" + day.get() + "\"",
              "the day of the earlier inspection, " + inspected + " at the latest");
    }
    return day;
  }

  private Optional<Odometer> odometer(Fields fields, String name) {
    return fields
        .required(name, ODOMETER)
        .flatMap(it -> values.text(it, Odometer.FORM, ODOMETER))
        .map(Odometer::parse);
  }
}
