package org.brakerules.model.json;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.brakerules.model.job.Axle;
import org.brakerules.model.job.VehicleUnit;
import org.brakerules.model.job.WheelEnd;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.WheelEndPath;

/** Reads the units of the vehicle with their axles and wheel ends. */
final class UnitReader {

  /** The largest number of units; the longest road train has fewer. */
  static final int MOST_UNITS = 20;

  private static final String UNIT_NAME =
      "the name of the unit in lower-case letters, digits and hyphens, such as \"tractor\"";

  private static final Names<Side> SIDES = Names.of(Side.class);
  private static final String SIDE = "the side seen by the driver: " + Shown.oneOf(SIDES.all());

  private final Values values;
  private final LocalDate inspected;
  private final Problems problems;

  /**
   * Reads the units of a job.
   *
   * @param inspected the day of the job, or one far ahead if it could not be read
   */
  UnitReader(Values values, LocalDate inspected) {
    this.values = values;
    this.inspected = inspected;
    this.problems = values.problems();
  }

  /** Reads the units of the job; those with a problem are left out. */
  List<VehicleUnit> units(Fields job) {
    Entries entries =
        new Entries("an array of at least one unit", "a unit: an object with its axles", problems);
    List<Node> nodes = entries.atLeastOne(job, "units");
    if (nodes.size() > MOST_UNITS) {
      problems.add(nodes.get(MOST_UNITS).spot(), "one unit too many", "at most " + MOST_UNITS);
    }
    boolean isCombination = nodes.size() > 1;
    Once<String> once = new Once<>(problems);
    return entries.each(nodes, (node, fields) -> unit(node, fields, isCombination, once));
  }

  private Supplier<VehicleUnit> unit(
      Node node, Fields fields, boolean isCombination, Once<String> once) {
    String name = unitName(node, fields, isCombination, once);
    Optional<LocalDate> builtOn = fields.optional("builtOn").flatMap(this::builtOn);
    Entries entries =
        new Entries(
            "an array of at least one axle",
            "an axle: an object with its number and wheel ends",
            problems);
    Once<Integer> axles = new Once<>(problems);
    List<Axle> read =
        entries.each(
            entries.atLeastOne(fields, "axles"),
            (axleNode, its) -> axle(axleNode, its, name, axles));
    return () -> new VehicleUnit(name, builtOn, read);
  }

  private Optional<LocalDate> builtOn(Node node) {
    Optional<LocalDate> day = values.date(node);
    if (day.isPresent() && day.get().isAfter(inspected)) {
      problems.add(
          node.spot(),
          "a day after the inspection, \"" + day.get() + "\"",
          "the day the unit was built, " + inspected + " at the latest");
    }
    return day;
  }

  private String unitName(Node node, Fields fields, boolean isCombination, Once<String> once) {
    Optional<Node> written =
        isCombination
            ? fields.required("unit", UNIT_NAME + ", since there is more than one")
            : fields.optional("unit");
    Optional<String> name = written.flatMap(it -> values.text(it, JobAssembly.NAME, UNIT_NAME));
    name.ifPresent(it -> once.add(it, node, "unit " + it, "another name for each unit"));
    return name.orElse("");
  }

  private Supplier<Axle> axle(Node node, Fields fields, String unit, Once<Integer> once) {
    int most = WheelEndPath.MOST_AXLES;
    Optional<Integer> number =
        fields
            .required("axle", "the number of the axle, counted from the front of its unit")
            .flatMap(it -> values.count(it, most));
    number.ifPresent(
        it -> once.add(it, node, "axle " + it, "both wheel ends of an axle in one place"));
    AxleKind kind =
        fields
            .optional("kind")
            .flatMap(it -> values.choice(it, Names.of(AxleKind.class)))
            .orElse(AxleKind.UNKNOWN);
    Entries entries =
        new Entries(
            "an array of one or two wheel ends",
            "a wheel end: an object with its side and parts",
            problems);
    Once<Side> sides = new Once<>(problems);
    List<WheelEnd> wheelEnds =
        entries.each(
            entries.atLeastOne(fields, "wheelEnds"),
            (end, its) -> wheelEnd(end, its, unit, number.orElse(1), sides));
    return () -> new Axle(number.orElseThrow(), kind, wheelEnds);
  }

  private Supplier<WheelEnd> wheelEnd(
      Node node, Fields fields, String unit, int axle, Once<Side> once) {
    Optional<Side> side = fields.required("side", SIDE).flatMap(it -> values.choice(it, SIDES));
    side.ifPresent(
        it -> once.add(it, node, Names.of(it) + " wheel end", "each side of an axle once"));
    WheelEndPath path = new WheelEndPath(unit, axle, side.orElse(Side.LEFT));
    RecordShape<Layout> shape = RecordShape.of(Layout.class);
    Layout layout =
        fields.optional("layout").flatMap(it -> shape.readAlone(it, values)).orElse(Layout.UNKNOWN);
    Entries entries =
        new Entries("an array of parts", "a part: an object that begins with its kind", problems);
    PartReader reader = new PartReader(path, values);
    List<Part> parts = entries.each(entries.of(fields.optional("parts")), reader::part);
    return () -> new WheelEnd(path, layout, parts);
  }
}
