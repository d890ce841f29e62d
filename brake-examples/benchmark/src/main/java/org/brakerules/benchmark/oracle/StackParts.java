package org.brakerules.benchmark.oracle;

import static org.brakerules.benchmark.oracle.Effect.adjust;
import static org.brakerules.benchmark.oracle.Effect.look;
import static org.brakerules.benchmark.oracle.Effect.replace;
import static org.brakerules.benchmark.oracle.Sentence.when;
import static org.brakerules.benchmark.oracle.Sentence.whenRenewed;
import static org.brakerules.benchmark.oracle.Subject.any;
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

  private static final List<Sentence> SENTENCES =
      List.of(
          when(any(HEAD_WASHER).missing(), replace("HEAD-WASHER-050")),
          when(any(HEAD_WASHER).seen("cupped", "grooved"), replace("HEAD-WASHER-010")),
          when(
              any(HEAD_WASHER).seen("wornOneSide"),
              replace("HEAD-WASHER-020"),
              look("HEAD-WASHER-030", "bent").of(old(CAMSHAFT)),
              look("HEAD-WASHER-040", "bent").of(old(CAMSHAFT_BRACKET))),
          when(any(SPACER).missing(), replace("SPACER-070")),
          when(any(SPACER).seen("distorted", "corroded"), replace("SPACER-010")),
          when(
              any(SPACER).seen("thinnerOnOneSide"),
              replace("SPACER-020"),
              look("SPACER-030", "bent").of(old(CAMSHAFT)),
              look("SPACER-040", "bent").of(old(CAMSHAFT_BRACKET))),
          when(
              any(SPACER).seen("thinnerOnOneSide").at(SPLINE_END),
              look("SPACER-050", "holesOutOfLine").of(SLACK_ADJUSTER)),
          when(any(SPACER).seen("unlikeOtherSide"), adjust("SPACER-060")),
          when(any(SHIM).missing(), replace("SHIM-060")),
          when(any(SHIM).seen("distorted", "corroded"), replace("SHIM-010")),
          when(
              any(SHIM).seen("thinnerOnOneSide"),
              replace("SHIM-020"),
              look("SHIM-030", "bent").of(old(CAMSHAFT)),
              look("SHIM-040", "bent").of(old(CAMSHAFT_BRACKET))),
          when(
              any(SHIM).seen("thinnerOnOneSide").at(SPLINE_END),
              look("SHIM-050", "holesOutOfLine").of(SLACK_ADJUSTER)),
          when(
              any(SNAP_RING).missing(),
              replace("SNAP-RING-040"),
              look("SNAP-RING-050", "ringGrooveRounded").of(old(CAMSHAFT))),
          when(old(SNAP_RING).disturbed(), replace("SNAP-RING-010")),
          when(
              any(SNAP_RING).seen("outOfGroove"),
              replace("SNAP-RING-020"),
              look("SNAP-RING-030", "ringGrooveRounded").of(old(CAMSHAFT))),
          when(any(SNAP_RING).beyond("gap.max"), adjust("SNAP-RING-060")),
          whenRenewed(CAMSHAFT, replace("SNAP-RING-070").of(SNAP_RING)),
          whenRenewed(CAMSHAFT_BUSHING, replace("SNAP-RING-080").of(SNAP_RING)),
          whenRenewed(SLACK_ADJUSTER, replace("SNAP-RING-090").of(any(SNAP_RING).at(SPLINE_END))));

  static final Group GROUP = new Group(POINTS, SENTENCES);

  private StackParts() {}
}
