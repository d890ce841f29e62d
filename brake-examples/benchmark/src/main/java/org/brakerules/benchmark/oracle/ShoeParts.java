package org.brakerules.benchmark.oracle;

import static org.brakerules.benchmark.oracle.Effect.adjust;
import static org.brakerules.benchmark.oracle.Effect.clean;
import static org.brakerules.benchmark.oracle.Effect.look;
import static org.brakerules.benchmark.oracle.Effect.replace;
import static org.brakerules.benchmark.oracle.Sentence.when;
import static org.brakerules.benchmark.oracle.Sentence.whenRenewed;
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

  private static final List<Sentence> SHOE_SENTENCES =
      List.of(
          when(any(SHOE).missing(), replace("SHOE-170")),
          when(
              old(SHOE).seen("webCracked", "webBent", "tableCracked", "tableBent"),
              replace("SHOE-040").of(old(SHOE))),
          when(old(SHOE).seen("looseRivets", "longRivetHoles"), replace("SHOE-050").of(old(SHOE))),
          when(any(SHOE).seen("brokenWeld"), replace("SHOE-060")),
          when(old(SHOE).seen("brokenWeld"), replace("SHOE-070").of(old(SHOE))),
          when(
              fresh(SHOE)
                  .seen(
                      "webCracked",
                      "webBent",
                      "tableCracked",
                      "tableBent",
                      "looseRivets",
                      "longRivetHoles",
                      "pocketWornOneWeb",
                      "anchorEndWornOneWeb"),
              replace("SHOE-080")),
          when(old(SHOE).beyond("span.min"), replace("SHOE-010").of(old(SHOE))),
          when(old(SHOE).beyond("span.max"), replace("SHOE-020").of(old(SHOE))),
          when(old(SHOE).beyond("roller-recess.max"), replace("SHOE-030").of(old(SHOE))),
          when(fresh(SHOE).beyond("span.min"), replace("SHOE-180")),
          when(fresh(SHOE).beyond("span.max"), replace("SHOE-190")),
          when(fresh(SHOE).beyond("roller-recess.max"), replace("SHOE-200")),
          when(any(SHOE).seen("rustUnderLining", "tablePitted"), replace("SHOE-090")),
          when(
              old(SHOE).seen("pocketWornOneWeb", "anchorEndWornOneWeb"),
              replace("SHOE-110").of(old(SHOE)),
              look("SHOE-120", "cocked").of(old(CAM_ROLLER)),
              look("SHOE-130", "worn").of(old(ANCHOR_BUSHING)),
              look("SHOE-140", "groove").of(old(ANCHOR_PIN)),
              look("SHOE-150", "broken").of(old(SHOE_RETAINING_SPRING))),
          when(any(SHOE).seen("unlikeMate"), replace("SHOE-160")),
          when(
              old(LINING).seen("liftedFromTable"),
              replace("SHOE-100").of(old(SHOE)).atSameStation()),
          whenRenewed(
              SHOE,
              replace("SHOE-230").of(old(SHOE)),
              replace("SHOE-210").of(old(SHOE)).acrossAxle(),
              clean("RETURN-SPRING-PIN-030").of(old(RETURN_SPRING_PIN)),
              look("RETURN-SPRING-PIN-040", "stuck").of(old(RETURN_SPRING_PIN))),
          when(
              fresh(SHOE),
              replace("SHOE-240").of(old(SHOE)),
              replace("SHOE-220").of(old(SHOE)).acrossAxle()));

  private static final List<Sentence> ROLLER_SENTENCES =
      List.of(
          when(any(CAM_ROLLER).missing(), replace("CAM-ROLLER-130")),
          when(
              any(CAM_ROLLER).seen("flat", "groove", "pit", "spalling"), replace("CAM-ROLLER-010")),
          when(any(CAM_ROLLER).seen("stuckAfterCleaning"), replace("CAM-ROLLER-020")),
          when(any(CAM_ROLLER).seen("neckedEnds"), replace("CAM-ROLLER-030")),
          when(
              any(CAM_ROLLER).seen("looseInPocket"),
              replace("CAM-ROLLER-040"),
              look("CAM-ROLLER-050", "pocketWornOneWeb").of(old(SHOE)).atSameStation(),
              look("CAM-ROLLER-160", "rollerRecess").of(old(SHOE)).atSameStation()),
          when(
              any(CAM_ROLLER).seen("seizedAsFound"),
              clean("CAM-ROLLER-060"),
              look("CAM-ROLLER-070", "stuckAfterCleaning"),
              look("CAM-ROLLER-080", "flat").of(old(CAMSHAFT)),
              look("CAM-ROLLER-090", "groove").of(old(CAMSHAFT)),
              look("CAM-ROLLER-100", "pocketWornOneWeb").of(old(SHOE)).atSameStation()),
          when(
              any(CAM_ROLLER).seen("cocked"),
              adjust("CAM-ROLLER-140"),
              look("CAM-ROLLER-150", "pocketWornOneWeb").of(old(SHOE)).atSameStation()),
          whenRenewed(LINING, replace("CAM-ROLLER-110").of(old(CAM_ROLLER))),
          when(fresh(LINING), replace("CAM-ROLLER-170").of(old(CAM_ROLLER))),
          whenRenewed(SHOE, replace("CAM-ROLLER-120").of(old(CAM_ROLLER))),
          when(fresh(SHOE), replace("CAM-ROLLER-180").of(old(CAM_ROLLER))),
          when(any(ROLLER_CLIP).missing(), replace("ROLLER-CLIP-050")),
          when(old(ROLLER_CLIP).disturbed(), replace("ROLLER-CLIP-010")),
          when(any(ROLLER_CLIP).seen("bent"), replace("ROLLER-CLIP-020")),
          when(any(ROLLER_CLIP).seen("notLocked"), adjust("ROLLER-CLIP-030")),
          whenRenewed(CAM_ROLLER, replace("ROLLER-CLIP-040").of(old(ROLLER_CLIP))));

  private static final List<Sentence> SPRING_SENTENCES =
      List.of(
          when(any(RETURN_SPRING).missing(), replace("RETURN-SPRING-050")),
          when(old(RETURN_SPRING).disturbed(), replace("RETURN-SPRING-010")),
          when(any(RETURN_SPRING).seen("broken"), replace("RETURN-SPRING-030")),
          when(any(RETURN_SPRING).seen("stretched", "wrongType"), replace("RETURN-SPRING-040")),
          whenRenewed(
              RETURN_SPRING, replace("RETURN-SPRING-060").of(old(RETURN_SPRING)).acrossAxle()),
          when(
              fresh(RETURN_SPRING),
              replace("RETURN-SPRING-070").of(old(RETURN_SPRING)).acrossAxle()),
          when(any(RETURN_SPRING_PIN).missing(), replace("RETURN-SPRING-PIN-060")),
          when(any(RETURN_SPRING_PIN).seen("worn", "broken"), replace("RETURN-SPRING-PIN-010")),
          when(any(RETURN_SPRING_PIN).seen("stuck"), replace("RETURN-SPRING-PIN-020")),
          whenRenewed(
              LINING,
              clean("RETURN-SPRING-PIN-050").of(old(RETURN_SPRING_PIN)),
              replace("RETURN-SPRING-020").of(old(RETURN_SPRING)),
              replace("SHOE-RETAINING-SPRING-020").of(old(SHOE_RETAINING_SPRING))),
          when(
              any(SHOE_RETAINING_SPRING).missing(),
              replace("SHOE-RETAINING-SPRING-070"),
              look("SHOE-RETAINING-SPRING-080", "anchorEndWornOneWeb").of(old(SHOE)),
              look("SHOE-RETAINING-SPRING-110", "pocketWornOneWeb").of(old(SHOE))),
          when(old(SHOE_RETAINING_SPRING).disturbed(), replace("SHOE-RETAINING-SPRING-010")),
          when(any(SHOE_RETAINING_SPRING).seen("broken"), replace("SHOE-RETAINING-SPRING-030")),
          when(any(SHOE_RETAINING_SPRING).seen("off"), replace("SHOE-RETAINING-SPRING-040")),
          when(
              any(SHOE_RETAINING_SPRING).seen("broken", "off"),
              look("SHOE-RETAINING-SPRING-050", "anchorEndWornOneWeb").of(old(SHOE)),
              look("SHOE-RETAINING-SPRING-060", "pocketWornOneWeb").of(old(SHOE))),
          whenRenewed(
              SHOE_RETAINING_SPRING,
              replace("SHOE-RETAINING-SPRING-090").of(old(SHOE_RETAINING_SPRING)).acrossAxle()),
          when(
              fresh(SHOE_RETAINING_SPRING),
              replace("SHOE-RETAINING-SPRING-100").of(old(SHOE_RETAINING_SPRING)).acrossAxle()));

  static final Group GROUP =
      new Group(POINTS, join(SHOE_SENTENCES, ROLLER_SENTENCES, SPRING_SENTENCES));

  private ShoeParts() {}
}
