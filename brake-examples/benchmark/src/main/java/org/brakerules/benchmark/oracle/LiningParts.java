package org.brakerules.benchmark.oracle;

import static org.brakerules.benchmark.oracle.Effect.adjust;
import static org.brakerules.benchmark.oracle.Effect.again;
import static org.brakerules.benchmark.oracle.Effect.hold;
import static org.brakerules.benchmark.oracle.Effect.look;
import static org.brakerules.benchmark.oracle.Effect.replace;
import static org.brakerules.benchmark.oracle.Sentence.when;
import static org.brakerules.benchmark.oracle.Sentence.whenRenewed;
import static org.brakerules.benchmark.oracle.Subject.any;
import static org.brakerules.benchmark.oracle.Subject.fresh;
import static org.brakerules.benchmark.oracle.Subject.old;
import static org.brakerules.benchmark.oracle.Trade.join;
import static org.brakerules.model.part.PartKind.DRUM;
import static org.brakerules.model.part.PartKind.LINING;
import static org.brakerules.model.part.PartKind.SHOE;

import java.util.List;
import org.brakerules.benchmark.oracle.Trade.Group;

/** The linings, which are renewed over the whole axle. */
final class LiningParts {

  private static final List<Point> POINTS =
      join(
          Point.read(
              LINING,
              """
              drum-off | always | axle.kind=steer | layout.liningPieces
              drum-off | always | part.condition=as-found | thickness loose broken fineCracks cracked
              drum-off | always | part.condition=as-found | extremelyUneven wornToIndicator oilSoaked
              drum-off | always | part.condition=as-found | greaseSoaked glazed liftedFromTable
              drum-off | always | part.condition=as-found | edgesDiffer camEndThin anchorEndThin
              drum-off | always | part.condition=as-found | cornerThin thinnerThanMate onlyThisWorn
              drum-off | always | part.condition=as-found | unlikePartner edgeRidge touchesInPlaces
              drum-off | on-demand |  | overFastener crackDepth axleWornMore
              drum-off | always | part.condition=as-found; layout.liningFastening=riveted/bolted | fastenerLoose
              drum-off | always | part.condition=as-found; layout.liningFastening=riveted/bolted | fastenerTouchesDrum
              drum-off | always | part.condition=as-found; layout.liningFastening=riveted/bolted | crackedAtBoltHoles
              drum-off | always |  | codesDiffer
              drum-off | always | layout.liningPieces=two-blocks | blocksExchanged
              drum-off | always | part.condition=new | sizeUnlikeDrum
              wheel-on | on-demand |  | grabs
              """));

  private static final List<Sentence> SENTENCES =
      List.of(
          when(any(LINING).with(Contradicting::thinnest), again("LINING-320", "thickness")),
          when(any(LINING).missing(), replace("LINING-230")),
          when(any(LINING).beyond("thickness.min"), replace("LINING-010")),
          when(any(LINING).beyond("thickness.periodic.min"), replace("LINING-020")),
          when(any(LINING).beyond("thickness.anywhere.min"), replace("LINING-300")),
          when(any(LINING).beyond("over-fastener.min"), replace("LINING-040")),
          when(any(LINING).beyond("crack-depth.max"), replace("LINING-070")),
          when(any(LINING).seen("wornToIndicator"), replace("LINING-030")),
          when(any(LINING).seen("loose", "broken"), replace("LINING-050")),
          when(any(LINING).seen("fastenerLoose", "fastenerTouchesDrum"), replace("LINING-060")),
          when(any(LINING).seen("extremelyUneven"), replace("LINING-110")),
          when(any(LINING).seen("fineCracks", "crackedAtBoltHoles"), look("LINING-100", "cracked")),
          when(
              any(LINING).seen("edgesDiffer", "camEndThin", "anchorEndThin", "cornerThin"),
              look("LINING-120", "thickness")),
          when(any(LINING).seen("cracked"), look("LINING-080", "crackDepth")),
          when(
              old(LINING).seen("cracked", "crackedAtBoltHoles").disturbed(), replace("LINING-090")),
          when(
              any(LINING).seen("oilSoaked", "greaseSoaked"),
              hold("LINING-140"),
              replace("LINING-130")),
          when(old(LINING).seen("glazed").disturbed(), replace("LINING-160")),
          when(
              fresh(LINING).seen("cracked", "crackedAtBoltHoles", "fineCracks", "glazed"),
              replace("LINING-330")),
          when(any(LINING).seen("glazed"), look("LINING-170", "greaseSoaked")),
          when(old(LINING).seen("glazed"), look("LINING-180", "drags").of(old(DRUM))),
          when(any(LINING).seen("liftedFromTable"), replace("LINING-220")),
          when(any(LINING).seen("codesDiffer"), replace("LINING-190")),
          when(any(LINING).seen("blocksExchanged"), adjust("LINING-200")),
          when(any(LINING).seen("sizeUnlikeDrum"), hold("LINING-210")),
          whenRenewed(SHOE, replace("LINING-240").of(old(LINING))),
          when(fresh(SHOE), replace("LINING-310").of(old(LINING))),
          whenRenewed(
              LINING,
              replace("LINING-250").of(old(LINING)),
              replace("LINING-260").of(old(LINING)).acrossAxle()),
          when(
              fresh(LINING),
              replace("LINING-280").of(old(LINING)),
              replace("LINING-290").of(old(LINING)).acrossAxle()),
          when(
              old(DRUM).seen("soaked"),
              hold("LINING-270").of(old(LINING)),
              replace("LINING-150").of(old(LINING))));

  static final Group GROUP = new Group(POINTS, SENTENCES);

  private LiningParts() {}
}
