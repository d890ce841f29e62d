package org.brakerules.benchmark.oracle;

import static org.brakerules.benchmark.oracle.Effect.adjust;
import static org.brakerules.benchmark.oracle.Effect.again;
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
import static org.brakerules.model.part.PartKind.ANCHOR_PIN_RETAINER;
import static org.brakerules.model.part.PartKind.CAMSHAFT_BUSHING;
import static org.brakerules.model.part.PartKind.LINING;
import static org.brakerules.model.part.PartKind.SHOE;
import static org.brakerules.model.part.PartKind.SPIDER;
import static org.brakerules.model.reading.Station.HEAD_END;

import java.util.List;
import org.brakerules.benchmark.oracle.Trade.Group;

/** The spider, and the anchor pins with their bushings and retainers. */
final class AnchorParts {

  private static final List<Point> POINTS =
      join(
          Point.read(
              SPIDER,
              """
              drum-off | always |  | loose
              drum-off | always | part.condition=as-found | cracked bent
              drum-off | on-demand |  | faceOutOfSquare boltHolesWorn
              shoes-off | on-demand |  | anchorBoreWorn
              camshaft-out | on-demand |  | bushingBoreWorn
              """),
          Point.read(
              ANCHOR_PIN,
              """
              shoes-off | always |  | layout.anchorPins
              shoes-off | on-demand |  | seized grooveDepth
              shoes-off | always | part.condition=as-found | groove step pit bent
              shoes-off | always | layout.anchorPins=fixed | looseInSpider
              """),
          Point.read(
              ANCHOR_BUSHING,
              """
              shoes-off | always | part.condition=as-found | worn
              shoes-off | always |  | loose
              """),
          Point.read(
              ANCHOR_PIN_RETAINER,
              """
              shoes-off | always |  | worn
              """));

  private static final String REMOVABLE = "layout.anchorPins=removable";
  private static final String FIXED = "layout.anchorPins=fixed";

  private static final Subject HEAD_BUSHING_IN_SPIDER =
      any(CAMSHAFT_BUSHING).at(HEAD_END).where("layout.camshaft=split");

  private static final Subject OLD_REMOVABLE_PIN = old(ANCHOR_PIN).where(REMOVABLE);

  private static final List<Sentence> SPIDER_SENTENCES =
      List.of(
          when(any(SPIDER).missing(), replace("SPIDER-110")),
          when(
              any(SPIDER).seen("loose"), adjust("SPIDER-010"), look("SPIDER-020", "boltHolesWorn")),
          when(any(SPIDER).seen("boltHolesWorn"), replace("SPIDER-030")),
          when(any(SPIDER).seen("cracked", "bent"), replace("SPIDER-040")),
          when(any(SPIDER).seen("faceOutOfSquare"), replace("SPIDER-050")),
          when(
              any(SPIDER).seen("bushingBoreWorn"),
              replace("SPIDER-060"),
              replace("CAMSHAFT-BUSHING-110").of(HEAD_BUSHING_IN_SPIDER)),
          when(any(SPIDER).seen("anchorBoreWorn"), replace("SPIDER-070")),
          whenRenewed(
              SPIDER,
              replace("ANCHOR-BUSHING-070").of(old(ANCHOR_BUSHING)),
              replace("SPIDER-100").of(HEAD_BUSHING_IN_SPIDER),
              replace("ANCHOR-PIN-070").of(old(ANCHOR_PIN).where(FIXED))));

  private static final List<Sentence> PIN_SENTENCES =
      List.of(
          when(any(ANCHOR_PIN).missing(), replace("ANCHOR-PIN-120")),
          when(any(ANCHOR_PIN).missing().where(FIXED), replace("ANCHOR-PIN-130").of(SPIDER)),
          when(
              any(ANCHOR_PIN).missing().where(REMOVABLE),
              replace("ANCHOR-PIN-180").of(OLD_REMOVABLE_PIN),
              replace("ANCHOR-BUSHING-130").of(old(ANCHOR_BUSHING))),
          when(
              OLD_REMOVABLE_PIN.seen("groove", "step", "pit", "bent"),
              replace("ANCHOR-PIN-010").of(OLD_REMOVABLE_PIN),
              replace("ANCHOR-BUSHING-020").of(old(ANCHOR_BUSHING))),
          when(fresh(ANCHOR_PIN).seen("groove", "step", "pit", "bent"), replace("ANCHOR-PIN-020")),
          when(
              any(ANCHOR_PIN).seen("groove", "step", "pit").where(FIXED),
              look("ANCHOR-PIN-040", "grooveDepth")),
          when(
              any(ANCHOR_PIN).beyond("groove-depth.max").where(FIXED),
              replace("ANCHOR-PIN-140"),
              replace("ANCHOR-PIN-050").of(SPIDER)),
          when(
              any(ANCHOR_PIN).seen("looseInSpider").where(FIXED),
              replace("ANCHOR-PIN-150"),
              replace("ANCHOR-PIN-060").of(SPIDER)),
          when(
              any(ANCHOR_PIN).seen("looseInSpider").where(REMOVABLE),
              look("ANCHOR-PIN-080", "anchorBoreWorn").of(SPIDER)),
          when(any(ANCHOR_PIN).seen("seized"), clean("ANCHOR-PIN-110")),
          whenRenewed(
              LINING,
              replace("ANCHOR-PIN-090").of(OLD_REMOVABLE_PIN),
              replace("ANCHOR-BUSHING-050").of(old(ANCHOR_BUSHING)),
              replace("ANCHOR-PIN-RETAINER-040").of(old(ANCHOR_PIN_RETAINER))),
          whenRenewed(
              SHOE,
              replace("ANCHOR-PIN-100").of(OLD_REMOVABLE_PIN),
              replace("ANCHOR-BUSHING-060").of(old(ANCHOR_BUSHING)),
              replace("ANCHOR-PIN-RETAINER-050").of(old(ANCHOR_PIN_RETAINER))),
          when(
              fresh(LINING),
              replace("ANCHOR-PIN-170").of(OLD_REMOVABLE_PIN),
              replace("ANCHOR-BUSHING-120").of(old(ANCHOR_BUSHING)),
              replace("ANCHOR-PIN-RETAINER-070").of(old(ANCHOR_PIN_RETAINER))),
          when(
              fresh(SHOE),
              replace("ANCHOR-PIN-190").of(OLD_REMOVABLE_PIN),
              replace("ANCHOR-BUSHING-150").of(old(ANCHOR_BUSHING)),
              replace("ANCHOR-PIN-RETAINER-080").of(old(ANCHOR_PIN_RETAINER))),
          when(fresh(ANCHOR_PIN), replace("ANCHOR-PIN-RETAINER-090").of(old(ANCHOR_PIN_RETAINER))),
          when(
              fresh(ANCHOR_PIN).where(REMOVABLE),
              replace("ANCHOR-PIN-160").of(OLD_REMOVABLE_PIN),
              replace("ANCHOR-BUSHING-110").of(old(ANCHOR_BUSHING)),
              look("SPIDER-090", "anchorBoreWorn").of(old(SPIDER))));

  private static final List<Sentence> BUSHING_SENTENCES =
      List.of(
          when(
              any(ANCHOR_BUSHING).missing(),
              replace("ANCHOR-BUSHING-080"),
              replace("ANCHOR-BUSHING-140").of(old(ANCHOR_BUSHING))),
          when(
              old(ANCHOR_BUSHING).seen("worn", "loose"),
              replace("ANCHOR-BUSHING-010").of(old(ANCHOR_BUSHING)),
              replace("ANCHOR-PIN-030").of(OLD_REMOVABLE_PIN)),
          when(
              fresh(ANCHOR_BUSHING).seen("loose"),
              again("ANCHOR-BUSHING-040", "loose"),
              replace("ANCHOR-BUSHING-030").of(old(SPIDER))),
          when(fresh(ANCHOR_BUSHING).seen("worn"), replace("ANCHOR-BUSHING-090")),
          when(
              fresh(ANCHOR_BUSHING),
              replace("ANCHOR-BUSHING-100").of(old(ANCHOR_BUSHING)),
              look("SPIDER-080", "anchorBoreWorn").of(old(SPIDER))),
          when(any(ANCHOR_PIN_RETAINER).missing(), replace("ANCHOR-PIN-RETAINER-060")),
          when(any(ANCHOR_PIN_RETAINER).seen("worn"), replace("ANCHOR-PIN-RETAINER-020")),
          when(old(ANCHOR_PIN_RETAINER).disturbed(), replace("ANCHOR-PIN-RETAINER-010")),
          whenRenewed(ANCHOR_PIN, replace("ANCHOR-PIN-RETAINER-030").of(old(ANCHOR_PIN_RETAINER))));

  static final Group GROUP =
      new Group(POINTS, join(SPIDER_SENTENCES, PIN_SENTENCES, BUSHING_SENTENCES));

  private AnchorParts() {}
}
