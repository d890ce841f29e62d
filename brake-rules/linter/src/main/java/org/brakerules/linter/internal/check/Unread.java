package org.brakerules.linter.internal.check;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.linter.internal.base.Row;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.ModelProperty;
import org.brakerules.linter.internal.language.Words;
import org.brakerules.model.part.PartKind;

/** What nobody reads, by the id under which {@code unread.csv} may except it. */
final class Unread {

  /** A sign of a kind of part. */
  record SignOf(PartKind kind, String property) {

    String id() {
      return kind.id() + "." + Words.ofProperty(property);
    }
  }

  private final RuleBase base;
  private final Reads reads;

  Unread(RuleBase base) {
    this.base = base;
    this.reads = new Reads(base);
  }

  /**
   * What is to be told of one kind of it: all that is not excepted. As long as a rule or a limit
   * cannot be read, nothing is, for that one may read it.
   */
  static <T> Map<String, T> toTell(RuleBase base, Function<Unread, Map<String, T>> what) {
    if (!Reads.areWhole(base)) {
      return Map.of();
    }
    Set<String> excepted =
        base.unreadRows().stream()
            .map(row -> row.text("id"))
            .collect(Collectors.toUnmodifiableSet());
    Map<String, T> left = new LinkedHashMap<>(what.apply(new Unread(base)));
    left.keySet().removeAll(excepted);
    return left;
  }

  /** Inspection points that no rule and no limit reads. */
  Map<String, Row> points() {
    Map<String, Row> points = new LinkedHashMap<>();
    base.points()
        .filter(TablePropertyCheck::isKnown)
        .filter(row -> !reads.point(row))
        .forEach(row -> points.put(row.text("id"), row));
    return points;
  }

  /** Kinds of parts that no rule looks at. */
  Map<String, PartKind> parts() {
    return Arrays.stream(PartKind.values())
        .filter(kind -> !reads.part(kind))
        .collect(Collectors.toUnmodifiableMap(PartKind::id, kind -> kind));
  }

  /** Signs that no rule looks at and no point asks for; a point is told for itself. */
  Map<String, SignOf> signs() {
    return signsOfModel()
        .filter(sign -> reads.part(sign.kind()))
        .filter(sign -> !reads.property(sign.kind(), sign.property()))
        .filter(sign -> !isAsked(sign))
        .collect(Collectors.toUnmodifiableMap(SignOf::id, sign -> sign));
  }

  /** Every id that could be excepted. */
  Set<String> everyId() {
    return Stream.of(
            base.pointIds().stream(),
            Arrays.stream(PartKind.values()).map(PartKind::id),
            signsOfModel().map(SignOf::id))
        .flatMap(ids -> ids)
        .collect(Collectors.toUnmodifiableSet());
  }

  private boolean isAsked(SignOf sign) {
    return base.points()
        .anyMatch(
            row ->
                row.text("part").equals(sign.kind().id())
                    && row.text("property").equals(sign.property()));
  }

  private static Stream<SignOf> signsOfModel() {
    return Arrays.stream(PartKind.values())
        .flatMap(
            kind ->
                ModelProperty.of(kind).stream()
                    .filter(ModelProperty::isSign)
                    .map(property -> new SignOf(kind, property.name())));
  }
}
