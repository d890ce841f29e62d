package org.brakerules.benchmark.oracle;

import static org.brakerules.benchmark.oracle.Effect.look;
import static org.brakerules.benchmark.oracle.Sentence.when;
import static org.brakerules.benchmark.oracle.Subject.any;
import static org.brakerules.benchmark.oracle.Subject.fresh;
import static org.brakerules.benchmark.oracle.Subject.old;
import static org.brakerules.benchmark.oracle.Trade.join;
import static org.brakerules.model.part.PartKind.ANCHOR_PIN;
import static org.brakerules.model.part.PartKind.CAMSHAFT;
import static org.brakerules.model.part.PartKind.CAMSHAFT_BUSHING;
import static org.brakerules.model.part.PartKind.CAMSHAFT_SEAL;
import static org.brakerules.model.part.PartKind.CAM_ROLLER;
import static org.brakerules.model.part.PartKind.CHAMBER;
import static org.brakerules.model.part.PartKind.DRUM;
import static org.brakerules.model.part.PartKind.GREASE_FITTING;
import static org.brakerules.model.part.PartKind.HUB;
import static org.brakerules.model.part.PartKind.LINING;
import static org.brakerules.model.part.PartKind.RETURN_SPRING;
import static org.brakerules.model.part.PartKind.SHOE;
import static org.brakerules.model.part.PartKind.SHOE_RETAINING_SPRING;
import static org.brakerules.model.part.PartKind.SLACK_ADJUSTER;
import static org.brakerules.model.part.PartKind.SPIDER;
import static org.brakerules.model.part.PartKind.WHEEL_SEAL;
import static org.brakerules.model.reading.Station.HEAD_END;
import static org.brakerules.model.reading.Station.SPLINE_END;
import static org.brakerules.model.reading.Station.TUBE;

import java.util.List;
import org.brakerules.benchmark.oracle.Trade.Group;

/**
 * From a pattern on the linings, or from grease and oil, to its causes, which only ask for looks.
 */
final class LiningCauses {

  private static final Subject AUTOMATIC_ADJUSTER =
      any(SLACK_ADJUSTER).where("layout.adjuster=automatic-pawl/automatic-clutch");

  /** The camshaft seals that have a lip, as they were found. */
  private static final Subject LIP_SEAL = old(CAMSHAFT_SEAL).unless("part.kind=o-ring");

  private static final Subject FITTING_OF_SHAFT =
      any(GREASE_FITTING).unless("part.station=adjuster");

  private static final List<Sentence> LINING_PATTERNS =
      List.of(
          when(
              any(LINING).seen("edgesDiffer"),
              look("CAUSE-010", "taper").of(old(DRUM)),
              look("CAUSE-030", "faceOutOfSquare").of(SPIDER)),
          when(
              any(LINING).seen("edgesDiffer", "thinnerThanMate"),
              look("CAUSE-020", "radialPlay").of(old(CAMSHAFT_BUSHING).at(HEAD_END))),
          when(
              any(LINING).seen("edgesDiffer", "cornerThin"),
              look("CAUSE-040", "webBent").of(old(SHOE)).atSameStation()),
          when(
              any(LINING).seen("edgesDiffer", "touchesInPlaces"),
              look("CAUSE-050", "tableBent").of(old(SHOE)).atSameStation()),
          when(
              any(LINING).seen("edgesDiffer", "edgeRidge", "oilSoaked", "grabs"),
              look("HUB-080", "looseAsFound").of(old(HUB))),
          when(
              any(LINING).seen("cornerThin", "onlyThisWorn"),
              look("CAUSE-060", "off").of(old(SHOE_RETAINING_SPRING)),
              look("CAUSE-070", "broken").of(old(SHOE_RETAINING_SPRING))),
          when(
              any(LINING).seen("cornerThin"),
              look("CAUSE-080", "cocked").of(old(CAM_ROLLER)).atSameStation(),
              look("CAUSE-090", "pocketWornOneWeb").of(old(SHOE)).atSameStation(),
              look("CAUSE-100", "anchorEndWornOneWeb").of(old(SHOE)).atSameStation()),
          when(
              any(LINING).seen("cornerThin", "anchorEndThin"),
              look("CAUSE-110", "groove").of(old(ANCHOR_PIN)).atSameStation()),
          when(
              any(LINING).seen("camEndThin", "anchorEndThin"),
              look("CAUSE-120", "freeStroke").of(CHAMBER),
              look("CAUSE-150", "span").of(old(SHOE)).atSameStation()),
          when(any(LINING).seen("camEndThin"), look("CAUSE-130", "diameter").of(old(DRUM))),
          when(
              any(LINING).seen("camEndThin", "touchesInPlaces"),
              look("CAUSE-140", "sizeUnlikeDrum")),
          when(
              any(LINING).seen("anchorEndThin", "thinnerThanMate"),
              look("CAUSE-160", "seized").of(old(ANCHOR_PIN))),
          when(
              any(LINING).seen("anchorEndThin", "thinnerThanMate", "onlyThisWorn"),
              look("CAUSE-170", "stretched").of(old(RETURN_SPRING))),
          when(
              any(LINING).seen("thinnerThanMate", "unlikePartner"),
              look("CAUSE-180", "codesDiffer")),
          when(
              any(LINING).seen("thinnerThanMate", "grabs"),
              look("CAUSE-190", "seizedAsFound").of(old(CAM_ROLLER)),
              look("CAUSE-200", "flat").of(old(CAM_ROLLER))),
          when(
              any(LINING).seen("onlyThisWorn", "unlikePartner"),
              look("CAUSE-210", "turnsFreely").of(CAMSHAFT)),
          when(
              any(LINING).seen("unlikePartner"),
              look("CAUSE-220", "pressureUnlikePartner").of(CHAMBER),
              look("CAUSE-230", "hexMoves").of(AUTOMATIC_ADJUSTER),
              look("CAUSE-240", "appliedStroke").of(CHAMBER).acrossAxle(),
              look("CAUSE-250", "hexMoves").of(AUTOMATIC_ADJUSTER).acrossAxle(),
              look("CAUSE-260", "turnsFreely").of(CAMSHAFT).acrossAxle()),
          when(
              any(LINING).seen("axleWornMore"),
              look("CAUSE-270", "sizeUnlikeList").of(CHAMBER),
              look("CAUSE-280", "pressureUnlikeOtherAxle").of(CHAMBER)),
          when(
              any(LINING).seen("edgeRidge"),
              look("CAUSE-290", "notSeated").of(DRUM),
              look("CAUSE-310", "runOut").of(DRUM),
              look("CAUSE-300", "unlikeMate").of(SHOE).atSameStation()),
          when(
              any(LINING).seen("touchesInPlaces", "grabs"),
              look("CAUSE-320", "outOfRound").of(old(DRUM))),
          when(
              any(LINING).seen("crackedAtBoltHoles", "liftedFromTable"),
              look("CAUSE-370", "rustUnderLining").of(old(SHOE)).atSameStation()),
          when(
              any(LINING).seen("grabs"),
              look("CAUSE-380", "freeStroke").of(CHAMBER),
              look("CAUSE-390", "flat").of(old(CAMSHAFT))));

  private static final List<Sentence> GREASE_AND_OIL =
      List.of(
          when(
              any(LINING).seen("greaseSoaked"),
              look("CAUSE-330", "purgeSideDry").of(FITTING_OF_SHAFT),
              look("CAUSE-340", "lip").of(LIP_SEAL),
              look("CAUSE-350", "worn").of(old(CAMSHAFT_SEAL).at(HEAD_END)),
              look("CAUSE-360", "sealGroove").of(old(CAMSHAFT))),
          when(
              any(LINING).seen("oilSoaked", "greaseSoaked"),
              look("WHEEL-SEAL-080", "leaking").of(old(WHEEL_SEAL))),
          when(
              any(LINING).seen("oilSoaked"),
              look("WHEEL-SEAL-090", "seatGrooved").of(WHEEL_SEAL),
              look("HUB-090", "gasketLeak").of(HUB),
              look("HUB-100", "ventBlocked").of(HUB),
              look("HUB-110", "overfilled").of(HUB)),
          when(
              fresh(WHEEL_SEAL).seen("leaking"),
              look("WHEEL-SEAL-100", "ventBlocked").of(HUB),
              look("WHEEL-SEAL-110", "endPlay").of(HUB),
              look("WHEEL-SEAL-120", "cocked"),
              look("WHEEL-SEAL-130", "seatGrooved")),
          when(
              any(GREASE_FITTING).seen("hardGrease", "purgeSideDry"),
              look("CAUSE-650", "greaseHoleOutOfLine").of(CAMSHAFT_BUSHING).atSameStation()),
          when(
              any(GREASE_FITTING).seen("hardGrease", "purgeSideDry").at(TUBE),
              look("CAUSE-660", "greaseHoleOutOfLine").of(CAMSHAFT_BUSHING),
              look("CAUSE-670", "lip").of(LIP_SEAL.at(SPLINE_END))),
          when(any(GREASE_FITTING).seen("hardGrease"), look("CAUSE-640", "blocked")),
          when(
              any(GREASE_FITTING).seen("purgeSideDry").where("layout.camshaft=split"),
              look("CAUSE-680", "takesNoGrease")),
          when(
              any(CAMSHAFT).seen("journalWorn"),
              look("CAUSE-690", "takesNoGrease").of(FITTING_OF_SHAFT)));

  static final Group GROUP = new Group(List.of(), join(LINING_PATTERNS, GREASE_AND_OIL));

  private LiningCauses() {}
}
