package org.brakerules.internal.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakerules.InspectionPoint;
import org.brakerules.internal.check.Checks;
import org.brakerules.internal.table.Point;
import org.brakerules.internal.table.Subject;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.Tag;
import org.brakerules.model.part.WheelEndPath;

/** The inspection points of a brake that nobody has looked at yet. */
public final class PointsBefore {

  private static final WheelEndPath ANY = WheelEndPath.of(1, Side.LEFT);

  private final Tables tables;
  private final Checks checks;

  /** Chooses limits by date and rule set. */
  public PointsBefore(Tables tables, LocalDate date, RuleSet ruleSet) {
    this.tables = tables;
    this.checks = Checks.before(tables, date, ruleSet);
  }

  /** The points of every part the layout has for certain, in path order. */
  public List<InspectionPoint> of(Layout layout, Scope scope) {
    List<InspectionPoint> points = new ArrayList<>();
    for (Place place : layout.expectedParts(ANY, scope)) {
      Subject subject =
          new Subject(
              Optional.empty(), AxleKind.UNKNOWN, layout, place.kind().blank(Tag.asFound(place)));
      InspectedPart part = new InspectedPart(subject, false, checks.of(subject));
      List<Point> ofKind = tables.points().of(place.kind());
      OpenPoints open = new OpenPoints(ofKind, tables.limits(), checks, scope);
      ofKind.stream()
          .filter(point -> open.isNeeded(part, point))
          .map(point -> asPoint(point, open.needed(part, point, "")))
          .forEach(points::add);
    }
    return points;
  }

  private static InspectionPoint asPoint(Point point, Needed needed) {
    return new InspectionPoint(
        point.id(),
        point.part(),
        needed.part().station(),
        point.task(),
        point.property().name(),
        needed.what(),
        needed.station(),
        needed.methods(),
        needed.conditions(),
        needed.instrument(),
        needed.how(),
        needed.from(),
        needed.limits());
  }
}
