package org.brakerules.benchmark.oracle;

import static org.brakerules.benchmark.oracle.Effect.adjust;
import static org.brakerules.benchmark.oracle.Effect.again;
import static org.brakerules.benchmark.oracle.Effect.hold;
import static org.brakerules.benchmark.oracle.Effect.look;
import static org.brakerules.benchmark.oracle.Effect.replace;
import static org.brakerules.benchmark.oracle.Sentence.when;
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

  private static final List<Figure> FIGURES =
      join(
          Figure.read(
              LINING,
              """
              thickness.min | thickness | at least 3/16 in | shoe-centre caliper depth-gauge steel-rule | axle.kind=steer; layout.liningPieces=strip | only:us-federal law:us-federal
              thickness.min | thickness | at least 1/4 in | shoe-centre caliper depth-gauge steel-rule | axle.kind=steer; layout.liningPieces=two-blocks | only:us-federal law:us-federal
              thickness.min | thickness | at least 1/4 in | shoe-centre caliper depth-gauge steel-rule | axle.kind=drive/trailer | only:us-federal law:us-federal
              thickness.min | thickness | at least 5 mm | thinnest-point caliper depth-gauge steel-rule | layout.liningFastening=bonded | only:quebec law:quebec
              thickness.min | thickness | at least 4.8 mm | thinnest-point caliper depth-gauge steel-rule | layout.liningFastening=riveted; axle.kind=steer | only:quebec law:quebec
              thickness.min | thickness | at least 8 mm | thinnest-point caliper depth-gauge steel-rule | layout.liningFastening=riveted; axle.kind=drive/trailer | only:quebec law:quebec
              thickness.min | thickness | at least 8 mm | thinnest-point caliper depth-gauge steel-rule | layout.liningFastening=bolted | only:quebec law:quebec
              thickness.periodic.min | thickness | at least 1/4 in | shoe-centre caliper depth-gauge steel-rule |  | only:us-federal law:us-federal
              thickness.anywhere.min | thickness | at least 3/16 in | thinnest-point caliper depth-gauge steel-rule | axle.kind=steer | only:us-federal
              thickness.anywhere.min | thickness | at least 1/4 in | thinnest-point caliper depth-gauge steel-rule | axle.kind=drive/trailer | only:us-federal
              over-fastener.min | overFastener | at least 1/32 in | depth-gauge caliper | layout.liningFastening=riveted/bolted |
              crack-depth.max | crackDepth | at most 50 % | depth-gauge feeler-gauge steel-rule | part.cracked=seen | law:quebec
              """));

  private static final List<Sentence> SENTENCES =
      List.of(
          when(any(LINING).with(Contradicting::thinnest), again()),
          when(any(LINING).missing(), replace()),
          when(
              any(LINING)
                  .beyond(
                      "thickness.min",
                      "thickness.periodic.min",
                      "thickness.anywhere.min",
                      "over-fastener.min",
                      "crack-depth.max"),
              replace()),
          when(
              any(LINING)
                  .seen(
                      "loose",
                      "broken",
                      "fastenerLoose",
                      "fastenerTouchesDrum",
                      "extremelyUneven",
                      "wornToIndicator"),
              replace()),
          when(any(LINING).seen("fineCracks", "crackedAtBoltHoles"), look("cracked")),
          when(
              any(LINING).seen("edgesDiffer", "camEndThin", "anchorEndThin", "cornerThin"),
              look("thickness")),
          when(any(LINING).seen("cracked"), look("crackDepth")),
          when(old(LINING).seen("cracked", "crackedAtBoltHoles").disturbed(), replace()),
          when(
              any(LINING).seen("crackedAtBoltHoles"),
              look("rustUnderLining").of(old(SHOE)).atSameStation()),
          when(any(LINING).seen("oilSoaked", "greaseSoaked"), hold(), replace()),
          when(old(LINING).seen("glazed").disturbed(), replace()),
          when(
              fresh(LINING).seen("cracked", "crackedAtBoltHoles", "fineCracks", "glazed"),
              replace()),
          when(any(LINING).seen("glazed"), look("greaseSoaked")),
          when(old(LINING).seen("glazed"), look("drags").of(old(DRUM))),
          when(any(LINING).seen("liftedFromTable"), replace()),
          when(any(LINING).seen("codesDiffer"), replace()),
          when(any(LINING).seen("blocksExchanged"), adjust()),
          when(any(LINING).seen("sizeUnlikeDrum"), hold()),
          when(any(SHOE).renewed(), replace().of(old(LINING))),
          when(fresh(SHOE), replace().of(old(LINING))),
          when(
              any(LINING).renewed(),
              replace().of(old(LINING)),
              replace().of(old(LINING)).acrossAxle()),
          when(fresh(LINING), replace().of(old(LINING)), replace().of(old(LINING)).acrossAxle()),
          when(old(DRUM).seen("soaked"), hold().of(old(LINING)), replace().of(old(LINING))));

  static final Group GROUP = new Group(POINTS, FIGURES, SENTENCES);

  private LiningParts() {}
}
