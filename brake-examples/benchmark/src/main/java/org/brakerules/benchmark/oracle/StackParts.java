package org.brakerules.benchmark.oracle;

import static org.brakerules.benchmark.oracle.Effect.adjust;
import static org.brakerules.benchmark.oracle.Effect.look;
import static org.brakerules.benchmark.oracle.Effect.replace;
import static org.brakerules.benchmark.oracle.Sentence.when;
import static org.brakerules.benchmark.oracle.Subject.any;
import static org.brakerules.benchmark.oracle.Subject.fresh;
import static org.brakerules.benchmark.oracle.Subject.old;
import static org.brakerules.benchmark.oracle.Trade.join;
import static org.brakerules.model.part.PartKind.CAMSHAFT;
import static org.brakerules.model.part.PartKind.CAMSHAFT_BRACKET;
import static org.brakerules.model.part.PartKind.CAMSHAFT_BUSHING;
import static org.brakerules.model.part.PartKind.HEAD_WASHER;
import static org.brakerules.model.part.PartKind.SHIM;
import static org.brakerules.model.part.PartKind.SLACK_ADJUSTER;
import static org.brakerules.model.part.PartKind.SNAP_RING;
import static org.brakerules.model.part.PartKind.SPACER;
import static org.brakerules.model.reading.Station.SPLINE_END;

import java.util.List;
import org.brakerules.benchmark.oracle.Trade.Group;

/** What sits on the camshaft: head washer, spacers, shims and snap rings. */
final class StackParts {

  private static final List<Point> POINTS =
      join(
          Point.read(
              HEAD_WASHER,
              """
              camshaft-out | always |  | cupped
              camshaft-out | always | part.condition=as-found | grooved wornOneSide
              """),
          Point.read(
              SPACER,
              """
              camshaft-out | always |  | distorted
              camshaft-out | always | part.condition=as-found | corroded thinnerOnOneSide
              camshaft-out | on-demand |  | unlikeOtherSide thickness
              """),
          Point.read(
              SHIM,
              """
              camshaft-out | always |  | distorted
              camshaft-out | always | part.condition=as-found | corroded thinnerOnOneSide
              camshaft-out | on-demand |  | thickness
              """),
          Point.read(
              SNAP_RING,
              """
              wheel-on | always |  | outOfGroove
              wheel-on | always | part.station=spline-end; part.condition=new | gap
              """));

  private static final List<Figure> FIGURES =
      join(
          Figure.read(
              SNAP_RING,
              """
              gap.max | gap | at most 0.062 in | spline-end feeler-gauge | part.station=spline-end |
              """));

  private static final List<Sentence> SENTENCES =
      List.of(
          when(any(HEAD_WASHER).missing(), replace()),
          when(any(HEAD_WASHER).seen("cupped", "grooved"), replace()),
          when(
              any(HEAD_WASHER).seen("wornOneSide"),
              replace(),
              look("bent").of(old(CAMSHAFT)),
              look("bent").of(old(CAMSHAFT_BRACKET))),
          when(any(SPACER).missing(), replace()),
          when(any(SPACER).seen("distorted", "corroded"), replace()),
          when(
              any(SPACER).seen("thinnerOnOneSide"),
              replace(),
              look("bent").of(old(CAMSHAFT)),
              look("bent").of(old(CAMSHAFT_BRACKET))),
          when(
              any(SPACER).seen("thinnerOnOneSide").at(SPLINE_END),
              look("holesOutOfLine").of(SLACK_ADJUSTER)),
          when(any(SPACER).seen("unlikeOtherSide"), adjust()),
          when(any(SHIM).seen("distorted", "corroded"), replace()),
          when(
              any(SHIM).seen("thinnerOnOneSide"),
              replace(),
              look("bent").of(old(CAMSHAFT)),
              look("bent").of(old(CAMSHAFT_BRACKET))),
          when(
              any(SHIM).seen("thinnerOnOneSide").at(SPLINE_END),
              look("holesOutOfLine").of(SLACK_ADJUSTER)),
          when(any(SHIM).missing(), replace()),
          when(any(SNAP_RING).missing(), replace(), look("ringGrooveRounded").of(old(CAMSHAFT))),
          when(old(SNAP_RING).disturbed(), replace()),
          when(
              old(SNAP_RING).seen("outOfGroove"),
              replace(),
              look("ringGrooveRounded").of(old(CAMSHAFT))),
          when(fresh(SNAP_RING).seen("outOfGroove"), replace()),
          when(any(SNAP_RING).beyond("gap.max"), adjust()),
          when(any(CAMSHAFT).renewed(), replace().of(SNAP_RING)),
          when(any(CAMSHAFT_BUSHING).renewed(), replace().of(SNAP_RING)),
          when(any(SLACK_ADJUSTER).renewed(), replace().of(any(SNAP_RING).at(SPLINE_END))));

  static final Group GROUP = new Group(POINTS, FIGURES, SENTENCES);

  private StackParts() {}
}
