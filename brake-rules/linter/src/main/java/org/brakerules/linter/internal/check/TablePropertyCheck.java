package org.brakerules.linter.internal.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.Row;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.ModelProperty;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.PartKind;

/** A limit is of something that is measured on its part, a point of something its part has. */
final class TablePropertyCheck implements Check {

  @Override
  public void check(RuleBase base, Findings findings) {
    base.limits().forEach(row -> kind(row).ifPresent(kind -> checkLimit(row, kind, findings)));
    base.points().forEach(row -> kind(row).ifPresent(kind -> checkPoint(row, kind, findings)));
  }

  /** Whether the row names a property that its part, the layout or the vehicle has. */
  static boolean isKnown(Row row) {
    return kind(row).filter(kind -> names(kind).contains(row.text("property"))).isPresent();
  }

  /** The measurement that a row names; empty if it names something else. */
  static Optional<ModelProperty> measurement(Row row) {
    return kind(row)
        .flatMap(kind -> ModelProperty.find(kind, row.text("property")))
        .filter(ModelProperty::isMeasurement);
  }

  private static void checkLimit(Row row, PartKind kind, Findings findings) {
    if (ModelProperty.find(kind, row.text("property")).isEmpty()) {
      addUnknown(row, kind, measurements(kind), findings);
    } else if (measurement(row).isEmpty()) {
      add(
          row,
          row.text("property")
              + " of the "
              + kind.inWords()
              + " is not measured, so nothing can be held against the limit",
          Remedy.known(
              "", measurements(kind), "name a property that is measured, or ask for it as a point"),
          findings);
    }
  }

  private static void checkPoint(Row row, PartKind kind, Findings findings) {
    if (!isKnown(row)) {
      addUnknown(row, kind, names(kind), findings);
    }
  }

  private static void addUnknown(Row row, PartKind kind, List<String> names, Findings findings) {
    if (!row.text("property").isEmpty()) {
      add(
          row,
          "the " + kind.inWords() + " has no property \"" + row.text("property") + "\" to ask for",
          Remedy.known(
              row.text("property"), names, "see the record of the part for its properties"),
          findings);
    }
  }

  private static Optional<PartKind> kind(Row row) {
    return PartKind.byId(row.text("part"));
  }

  private static List<String> measurements(PartKind kind) {
    return ModelProperty.of(kind).stream()
        .filter(ModelProperty::isMeasurement)
        .map(ModelProperty::name)
        .toList();
  }

  private static List<String> names(PartKind kind) {
    return Stream.of(
            ModelProperty.of(kind).stream().map(ModelProperty::name),
            ModelProperty.of(Layout.class).stream().map(one -> Point.OF_LAYOUT + one.name()),
            Stream.of(Point.BUILT_ON))
        .flatMap(names -> names)
        .toList();
  }

  private static void add(Row row, String message, String remedy, Findings findings) {
    findings.add(LintKind.TABLE_PROPERTY, row.cell("property").spot(), message, remedy);
  }
}
