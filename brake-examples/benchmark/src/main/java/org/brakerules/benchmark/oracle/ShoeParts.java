package org.brakerules.benchmark.oracle;

import static org.brakerules.benchmark.oracle.Effect.adjust;
import static org.brakerules.benchmark.oracle.Effect.clean;
import static org.brakerules.benchmark.oracle.Effect.look;
import static org.brakerules.benchmark.oracle.Effect.replace;
import static org.brakerules.benchmark.oracle.Sentence.when;
import static org.brakerules.benchmark.oracle.Subject.any;
import static org.brakerules.benchmark.oracle.Subject.fresh;
import static org.brakerules.benchmark.oracle.Subject.old;
import static org.brakerules.benchmark.oracle.Trade.join;
import static org.brakerules.model.part.PartKind.ANCHOR_BUSHING;
import static org.brakerules.model.part.PartKind.ANCHOR_PIN;
import static org.brakerules.model.part.PartKind.CAMSHAFT;
import static org.brakerules.model.part.PartKind.CAM_ROLLER;
import static org.brakerules.model.part.PartKind.LINING;
import static org.brakerules.model.part.PartKind.RETURN_SPRING;
import static org.brakerules.model.part.PartKind.RETURN_SPRING_PIN;
import static org.brakerules.model.part.PartKind.ROLLER_CLIP;
import static org.brakerules.model.part.PartKind.SHOE;
import static org.brakerules.model.part.PartKind.SHOE_RETAINING_SPRING;

import java.util.List;
import org.brakerules.benchmark.oracle.Trade.Group;

/** Shoes, rollers, clips and springs. */
final class ShoeParts {

  private static final List<Point> POINTS =
      join(
          Point.read(
              SHOE,
              """
              shoes-off | always | part.condition=as-found | webCracked webBent tableCracked tableBent
              shoes-off | always | part.condition=as-found | brokenWeld looseRivets longRivetHoles
              shoes-off | always | part.condition=as-found | rustUnderLining tablePitted span rollerRecess
              shoes-off | always | part.condition=as-found; layout.webs=double | pocketWornOneWeb
              shoes-off | always | part.condition=as-found; layout.webs=double | anchorEndWornOneWeb
              shoes-off | always |  | unlikeMate
              """),
          Point.read(
              CAM_ROLLER,
              """
              shoes-off | always | part.condition=as-found | seizedAsFound flat groove pit spalling
              shoes-off | always | part.condition=as-found | neckedEnds
              shoes-off | on-demand |  | cocked stuckAfterCleaning
              shoes-off | always |  | looseInPocket
              """),
          Point.read(
              ROLLER_CLIP,
              """
              shoes-off | always |  | bent notLocked
              """),
          Point.read(
              RETURN_SPRING,
              """
              drum-off | always | part.condition=as-found | broken
              drum-off | always |  | stretched
              drum-off | always | part.condition=new | wrongType
              """),
          Point.read(
              RETURN_SPRING_PIN,
              """
              shoes-off | always | part.condition=as-found | worn
              shoes-off | always |  | broken
              shoes-off | on-demand |  | stuck
              """),
          Point.read(
              SHOE_RETAINING_SPRING,
              """
              drum-off | always | part.condition=as-found | broken
              drum-off | always |  | off
              """));

  private static final List<Figure> FIGURES =
      join(
          Figure.read(
              SHOE,
              """
              span.min | span | at least | caliper steel-rule |  |
              span.max | span | at most | caliper steel-rule |  |
              roller-recess.max | rollerRecess | less than | caliper bore-gauge |  |
              """));

  private static final String[] DAMAGE = {
    "webCracked",
    "webBent",
    "tableCracked",
    "tableBent",
    "brokenWeld",
    "looseRivets",
    "longRivetHoles"
  };

  private static final List<Sentence> SHOE_SENTENCES =
      List.of(
          when(any(SHOE).missing(), replace()),
          when(old(SHOE).seen(DAMAGE), replace().of(old(SHOE))),
          when(fresh(SHOE).seen(DAMAGE), replace()),
          when(
              old(SHOE).beyond("span.min", "span.max", "roller-recess.max"),
              replace().of(old(SHOE))),
          when(fresh(SHOE).beyond("span.min", "span.max", "roller-recess.max"), replace()),
          when(any(SHOE).seen("rustUnderLining", "tablePitted"), replace()),
          when(
              old(SHOE).seen("pocketWornOneWeb", "anchorEndWornOneWeb"),
              replace().of(old(SHOE)),
              look("cocked").of(old(CAM_ROLLER)),
              look("worn").of(old(ANCHOR_BUSHING)),
              look("groove").of(old(ANCHOR_PIN)),
              look("broken").of(old(SHOE_RETAINING_SPRING))),
          when(fresh(SHOE).seen("pocketWornOneWeb", "anchorEndWornOneWeb"), replace()),
          when(any(SHOE).seen("unlikeMate"), replace()),
          when(old(LINING).seen("liftedFromTable"), replace().of(old(SHOE)).atSameStation()),
          when(
              any(SHOE).renewed(),
              replace().of(old(SHOE)),
              replace().of(old(SHOE)).acrossAxle(),
              clean().of(old(RETURN_SPRING_PIN)),
              look("stuck").of(old(RETURN_SPRING_PIN))),
          when(fresh(SHOE), replace().of(old(SHOE)), replace().of(old(SHOE)).acrossAxle()));

  private static final List<Sentence> ROLLER_SENTENCES =
      List.of(
          when(any(CAM_ROLLER).missing(), replace()),
          when(
              any(CAM_ROLLER)
                  .seen("flat", "groove", "pit", "spalling", "stuckAfterCleaning", "neckedEnds"),
              replace()),
          when(
              any(CAM_ROLLER).seen("looseInPocket"),
              replace(),
              look("pocketWornOneWeb").of(old(SHOE)).atSameStation(),
              look("rollerRecess").of(old(SHOE)).atSameStation()),
          when(
              any(CAM_ROLLER).seen("seizedAsFound"),
              look("stuckAfterCleaning"),
              look("flat").of(old(CAMSHAFT)),
              look("groove").of(old(CAMSHAFT)),
              look("pocketWornOneWeb").of(old(SHOE)).atSameStation()),
          when(any(CAM_ROLLER).seen("seizedAsFound").notSeen("stuckAfterCleaning"), clean()),
          when(
              any(CAM_ROLLER).seen("cocked"),
              adjust(),
              look("pocketWornOneWeb").of(old(SHOE)).atSameStation()),
          when(any(LINING).renewed(), replace().of(old(CAM_ROLLER))),
          when(fresh(LINING), replace().of(old(CAM_ROLLER))),
          when(fresh(SHOE), replace().of(old(CAM_ROLLER))),
          when(any(SHOE).renewed(), replace().of(old(CAM_ROLLER))),
          when(any(ROLLER_CLIP).missing(), replace()),
          when(old(ROLLER_CLIP).disturbed(), replace()),
          when(any(ROLLER_CLIP).seen("bent"), replace()),
          when(any(ROLLER_CLIP).seen("notLocked"), adjust()),
          when(any(CAM_ROLLER).renewed(), replace().of(old(ROLLER_CLIP))));

  private static final List<Sentence> SPRING_SENTENCES =
      List.of(
          when(any(RETURN_SPRING).missing(), replace()),
          when(old(RETURN_SPRING).disturbed(), replace()),
          when(any(RETURN_SPRING).seen("broken", "stretched", "wrongType"), replace()),
          when(any(RETURN_SPRING).renewed(), replace().of(old(RETURN_SPRING)).acrossAxle()),
          when(fresh(RETURN_SPRING), replace().of(old(RETURN_SPRING)).acrossAxle()),
          when(any(RETURN_SPRING_PIN).missing(), replace()),
          when(any(RETURN_SPRING_PIN).seen("stuck", "worn", "broken"), replace()),
          when(
              any(LINING).renewed(),
              clean().of(old(RETURN_SPRING_PIN)),
              replace().of(old(RETURN_SPRING)),
              replace().of(old(SHOE_RETAINING_SPRING))),
          when(
              any(SHOE_RETAINING_SPRING).missing(),
              replace(),
              look("pocketWornOneWeb").of(old(SHOE)),
              look("anchorEndWornOneWeb").of(old(SHOE))),
          when(old(SHOE_RETAINING_SPRING).disturbed(), replace()),
          when(
              old(SHOE_RETAINING_SPRING).seen("broken", "off"),
              replace(),
              look("pocketWornOneWeb").of(old(SHOE)),
              look("anchorEndWornOneWeb").of(old(SHOE))),
          when(fresh(SHOE_RETAINING_SPRING).seen("broken", "off"), replace()),
          when(
              any(SHOE_RETAINING_SPRING).renewed(),
              replace().of(old(SHOE_RETAINING_SPRING)).acrossAxle()),
          when(
              fresh(SHOE_RETAINING_SPRING), replace().of(old(SHOE_RETAINING_SPRING)).acrossAxle()));

  static final Group GROUP =
      new Group(POINTS, FIGURES, join(SHOE_SENTENCES, ROLLER_SENTENCES, SPRING_SENTENCES));

  private ShoeParts() {}
}
