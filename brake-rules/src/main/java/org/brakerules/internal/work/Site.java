package org.brakerules.internal.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.brakerules.figure.WheelEndFigures;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.work.WorkLevel;

/** The vehicle with its axles and wheel ends, and every step that could be done to them. */
final class Site {

  private final List<EndFacts> ends;
  private final List<Area> areas;
  private final Map<String, List<Spot>> spots = new LinkedHashMap<>();

  Site(
      BrakeJob job,
      Tables tables,
      StepTable table,
      JobDecision decision,
      List<WheelEndFigures> figures) {
    this.ends = new Ends(job, tables, table, decision, figures).all();
    this.areas = areas(ends);
    table.rows().forEach(row -> spots.put(row.id(), spots(row)));
    spots.values().forEach(ofOneRow -> ofOneRow.forEach(this::connect));
  }

  /** The wheel ends of the job in path order. */
  List<EndFacts> ends() {
    return ends;
  }

  /** The wheel ends that a spot concerns. */
  List<EndFacts> ends(Spot spot) {
    return ends.stream().filter(end -> spot.area().covers(end.area())).toList();
  }

  /** Every step at every place it could be done. */
  List<Spot> spots() {
    return spots.values().stream().flatMap(List::stream).toList();
  }

  /** Where a step is done to what concerns an area. */
  List<Spot> spots(String id, Area area) {
    return spots.getOrDefault(id, List.of()).stream()
        .filter(spot -> spot.area().concerns(area))
        .toList();
  }

  private List<Spot> spots(StepRow row) {
    return areas.stream()
        .filter(area -> area.level() == row.level())
        .map(area -> new Spot(row, area))
        .toList();
  }

  private void connect(Spot spot) {
    for (String need : spot.row().needs()) {
      spots(need, spot.area()).forEach(spot::addNeed);
    }
  }

  private static List<Area> areas(List<EndFacts> ends) {
    List<Area> areas = new ArrayList<>(List.of(Area.VEHICLE));
    ends.stream().map(EndFacts::area).forEach(areas::add);
    ends.stream()
        .map(end -> new Area(WorkLevel.AXLE, Ends.axle(end.end().path()), end.area().axle(), 0))
        .distinct()
        .forEach(areas::add);
    return areas.stream().sorted(Area.ORDER).toList();
  }
}
