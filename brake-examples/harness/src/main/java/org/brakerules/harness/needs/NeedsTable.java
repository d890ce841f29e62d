package org.brakerules.harness.needs;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.brakerules.InspectionPoint;
import org.brakerules.harness.report.NeededInWords;
import org.brakerules.harness.report.Page;
import org.brakerules.harness.report.Wording;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.reading.Station;

/** Inspection points as a table for people, part by part. */
public final class NeedsTable {

  private static final int INDENT = 2;
  private static final int LABEL = 24;
  private static final WheelEndPath ANY = WheelEndPath.of(1, Side.LEFT);

  private record PartOfBrake(PartKind kind, Station station) {

    static PartOfBrake of(InspectionPoint point) {
      return new PartOfBrake(point.part(), point.station());
    }

    String inWords() {
      return Wording.part(new Place(ANY, kind, station, 1));
    }
  }

  private final Page page;

  private NeedsTable(Page page) {
    this.page = page;
  }

  /** Writes the table. */
  public static void write(List<InspectionPoint> points, Page page) {
    Map<PartOfBrake, List<InspectionPoint>> byPart =
        points.stream()
            .collect(
                Collectors.groupingBy(PartOfBrake::of, LinkedHashMap::new, Collectors.toList()));
    NeedsTable table = new NeedsTable(page);
    byPart.forEach(
        (part, its) -> {
          page.gap();
          page.paragraph(0, part.inWords());
          its.forEach(table::point);
        });
  }

  private void point(InspectionPoint point) {
    line(field(point), NeededInWords.task(point.task(), point.id()) + " " + point.what());
    line(
        "",
        NeededInWords.doing(
            Optional.of(point.at()).filter(one -> one != point.station()),
            point.instrument(),
            point.methods(),
            point.conditions(),
            point.how()));
    point.limits().forEach(limit -> line("", "Limit: " + Wording.limit(limit) + "."));
  }

  private void line(String label, String words) {
    page.labelled(INDENT, label, LABEL, words);
  }

  /** The field of a job that answers a point. */
  private static String field(InspectionPoint point) {
    if (JobTemplate.isOfVehicle(point)) {
      return "unit." + point.property();
    }
    return JobTemplate.isOfLayout(point) ? "layout." + point.property() : point.property();
  }
}
