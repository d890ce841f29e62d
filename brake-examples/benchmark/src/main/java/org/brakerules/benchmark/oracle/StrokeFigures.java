package org.brakerules.benchmark.oracle;

import static org.brakerules.model.part.PartKind.CHAMBER;
import static org.brakerules.model.part.PartKind.SPRING_BRAKE;

import java.util.List;
import java.util.stream.Stream;
import org.brakerules.model.decision.Comparison;

/** The strokes of a chamber and the caged length of its spring brake. */
final class StrokeFigures {

  private static final String VIRGINIA = "us-virginia";

  private static final List<Figure> APPLIED =
      Figure.read(
          CHAMBER,
          """
              applied-stroke.max | appliedStroke | at most 1 1/4 in | full-application | layout.chamber.family=clamp; layout.chamber.type=6; layout.chamber.strokeClass=standard | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 3/8 in | full-application | layout.chamber.family=clamp; layout.chamber.type=9; layout.chamber.strokeClass=standard | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 3/8 in | full-application | layout.chamber.family=clamp; layout.chamber.type=12; layout.chamber.strokeClass=standard | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 3/4 in | full-application | layout.chamber.family=clamp; layout.chamber.type=12; layout.chamber.strokeClass=long | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 3/4 in | full-application | layout.chamber.family=clamp; layout.chamber.type=16; layout.chamber.strokeClass=standard | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 in | full-application | layout.chamber.family=clamp; layout.chamber.type=16; layout.chamber.strokeClass=long | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 3/4 in | full-application | layout.chamber.family=clamp; layout.chamber.type=20; layout.chamber.strokeClass=standard | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 in | full-application | layout.chamber.family=clamp; layout.chamber.type=20; layout.chamber.strokeClass=long; layout.chamber.ratedStroke=not 3 in/76 mm | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 1/2 in | full-application | layout.chamber.family=clamp; layout.chamber.type=20; layout.chamber.strokeClass=long; layout.chamber.ratedStroke=3 in/76 mm | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 3/4 in | full-application | layout.chamber.family=clamp; layout.chamber.type=24; layout.chamber.strokeClass=standard | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 in | full-application | layout.chamber.family=clamp; layout.chamber.type=24; layout.chamber.strokeClass=long; layout.chamber.ratedStroke=not 3 in/76 mm | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 1/2 in | full-application | layout.chamber.family=clamp; layout.chamber.type=24; layout.chamber.strokeClass=long; layout.chamber.ratedStroke=3 in/76 mm | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 in | full-application | layout.chamber.family=clamp; layout.chamber.type=30; layout.chamber.strokeClass=standard | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 1/2 in | full-application | layout.chamber.family=clamp; layout.chamber.type=30; layout.chamber.strokeClass=long | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 1/4 in | full-application | layout.chamber.family=clamp; layout.chamber.type=36; layout.chamber.strokeClass=standard | law:us-federal to:2021-10-13
              applied-stroke.max | appliedStroke | at most 2 1/2 in | full-application | layout.chamber.family=clamp; layout.chamber.type=36; layout.chamber.strokeClass=standard | law:us-federal from:2021-10-14
              applied-stroke.max | appliedStroke | at most 2 1/4 in | full-application | layout.chamber.family=dual-diaphragm; layout.chamber.type=30 | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 3/8 in | full-application | layout.chamber.family=bolt; layout.chamber.type=A | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 3/4 in | full-application | layout.chamber.family=bolt; layout.chamber.type=B | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 3/4 in | full-application | layout.chamber.family=bolt; layout.chamber.type=C | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 1/4 in | full-application | layout.chamber.family=bolt; layout.chamber.type=D | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 3/8 in | full-application | layout.chamber.family=bolt; layout.chamber.type=E | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 1/4 in | full-application | layout.chamber.family=bolt; layout.chamber.type=F | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 in | full-application | layout.chamber.family=bolt; layout.chamber.type=G | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 1/2 in | full-application | layout.chamber.family=rotochamber; layout.chamber.type=9 | law:us-federal
              applied-stroke.max | appliedStroke | at most 1 1/2 in | full-application | layout.chamber.family=rotochamber; layout.chamber.type=12 | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 in | full-application | layout.chamber.family=rotochamber; layout.chamber.type=16 | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 in | full-application | layout.chamber.family=rotochamber; layout.chamber.type=20 | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 in | full-application | layout.chamber.family=rotochamber; layout.chamber.type=24 | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 1/4 in | full-application | layout.chamber.family=rotochamber; layout.chamber.type=30 | law:us-federal
              applied-stroke.max | appliedStroke | at most 2 3/4 in | full-application | layout.chamber.family=rotochamber; layout.chamber.type=36 | law:us-federal
              applied-stroke.max | appliedStroke | at most 3 in | full-application | layout.chamber.family=rotochamber; layout.chamber.type=50 | law:us-federal
              applied-stroke.max | appliedStroke | at most 80 % of the rated stroke | full-application | otherwise | law:us-federal
              """);

  private static final List<Figure> OTHERS =
      join(
          Figure.read(
              CHAMBER,
              """
              free-stroke.max | freeStroke | at most 0.625 in | pried-by-hand | layout.adjuster=automatic-pawl/automatic-clutch |
              free-stroke.max | freeStroke | at most 0.75 in | pried-by-hand | layout.adjuster=manual |
              free-stroke.min | freeStroke | at least 0.375 in | pried-by-hand | layout.adjuster=automatic-pawl/automatic-clutch |
              free-stroke.min | freeStroke | at least 0.5 in | pried-by-hand | layout.adjuster=manual |
              """),
          Figure.read(
              SPRING_BRAKE,
              """
              caged-length.min | cagedLength | at least 2.915 in | steel-rule caliper depth-gauge | layout.chamber.family=clamp; layout.chamber.type=24; layout.chamber.springType=24; layout.chamber.ratedStroke=2.25 in/2.5 in |
              caged-length.min | cagedLength | at least 2.915 in | steel-rule caliper depth-gauge | layout.chamber.family=clamp; layout.chamber.type=30; layout.chamber.springType=30; layout.chamber.ratedStroke=2.5 in |
              caged-length.min | cagedLength | at least 3.537 in | steel-rule caliper depth-gauge | layout.chamber.family=clamp; layout.chamber.type=30; layout.chamber.springType=30; layout.chamber.ratedStroke=3 in/76 mm |
              caged-length.min | cagedLength | at least 3.463 in | steel-rule caliper depth-gauge | layout.chamber.family=clamp; layout.chamber.type=24; layout.chamber.springType=30; layout.chamber.ratedStroke=3 in/76 mm |
              caged-length.min | cagedLength | at least 3.602 in | steel-rule caliper depth-gauge | layout.chamber.family=clamp; layout.chamber.type=36; layout.chamber.springType=36; layout.chamber.ratedStroke=3 in/76 mm |
              """));

  /** Virginia fails a stroke that is equal to the figure; all others pass it. */
  static final List<Figure> ALL =
      join(
          APPLIED.stream().map(row -> row.exceptUnder(VIRGINIA)).toList(),
          APPLIED.stream().map(row -> row.heldUnder(VIRGINIA, Comparison.LESS_THAN)).toList(),
          OTHERS);

  private StrokeFigures() {}

  @SafeVarargs
  @SuppressWarnings("varargs") // the array is only read
  private static List<Figure> join(List<Figure>... lists) {
    return Stream.of(lists).flatMap(List::stream).toList();
  }
}
