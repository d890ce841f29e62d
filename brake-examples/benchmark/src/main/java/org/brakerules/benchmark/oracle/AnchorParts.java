package org.brakerules.benchmark.oracle;

import static org.brakerules.benchmark.oracle.Effect.adjust;
import static org.brakerules.benchmark.oracle.Effect.again;
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

  private static final List<Figure> FIGURES =
      join(
          Figure.read(
              ANCHOR_PIN,
              """
              groove-depth.max | grooveDepth | at most 0.03 in | depth-gauge | layout.anchorPins=fixed |
              """));

  private static final List<Sentence> SPIDER_SENTENCES =
      List.of(
          when(any(SPIDER).missing(), replace()),
          when(any(SPIDER).seen("loose"), look("boltHolesWorn")),
          when(any(SPIDER).seen("loose").notSeen("boltHolesWorn"), adjust()),
          when(
              any(SPIDER)
                  .seen(
                      "cracked",
                      "bent",
                      "faceOutOfSquare",
                      "boltHolesWorn",
                      "anchorBoreWorn",
                      "bushingBoreWorn"),
              replace()),
          when(
              any(SPIDER).renewed(),
              replace().of(old(ANCHOR_BUSHING)),
              replace().of(any(CAMSHAFT_BUSHING).at(HEAD_END).where("layout.camshaft=split"))),
          when(
              any(SPIDER).seen("bushingBoreWorn"),
              replace().of(any(CAMSHAFT_BUSHING).at(HEAD_END).where("layout.camshaft=split"))));

  /** What is renewed whenever the shoes are relined or exchanged. */
  private static final Effect[] RELINE_SET = {
    replace().of(old(ANCHOR_PIN).where("layout.anchorPins=removable")),
    replace().of(old(ANCHOR_BUSHING)),
    replace().of(old(ANCHOR_PIN_RETAINER))
  };

  private static final List<Sentence> PIN_SENTENCES =
      List.of(
          when(any(ANCHOR_PIN).missing(), replace()),
          when(any(ANCHOR_PIN).missing().where("layout.anchorPins=fixed"), replace().of(SPIDER)),
          when(
              old(ANCHOR_PIN)
                  .seen("groove", "step", "pit", "bent")
                  .where("layout.anchorPins=removable"),
              replace().of(old(ANCHOR_PIN)),
              replace().of(old(ANCHOR_BUSHING))),
          when(fresh(ANCHOR_PIN).seen("groove", "step", "pit", "bent"), replace()),
          when(
              any(ANCHOR_PIN).seen("groove", "step", "pit").where("layout.anchorPins=fixed"),
              look("grooveDepth")),
          when(
              any(ANCHOR_PIN).beyond("groove-depth.max").where("layout.anchorPins=fixed"),
              replace(),
              replace().of(SPIDER)),
          when(
              any(ANCHOR_PIN).seen("looseInSpider").where("layout.anchorPins=fixed"),
              replace(),
              replace().of(SPIDER)),
          when(
              any(SPIDER).renewed(),
              replace().of(old(ANCHOR_PIN).where("layout.anchorPins=fixed"))),
          when(
              any(ANCHOR_PIN).seen("looseInSpider").where("layout.anchorPins=removable"),
              look("anchorBoreWorn").of(SPIDER)),
          when(any(ANCHOR_PIN).seen("seized"), clean()),
          when(any(LINING).renewed(), RELINE_SET),
          when(any(SHOE).renewed(), RELINE_SET),
          when(fresh(LINING), RELINE_SET),
          when(fresh(SHOE), RELINE_SET),
          when(fresh(ANCHOR_PIN), replace().of(old(ANCHOR_PIN_RETAINER))),
          when(
              fresh(ANCHOR_PIN).where("layout.anchorPins=removable"),
              replace().of(old(ANCHOR_PIN)),
              replace().of(old(ANCHOR_BUSHING)),
              look("anchorBoreWorn").of(old(SPIDER))));

  private static final List<Sentence> BUSHING_SENTENCES =
      List.of(
          when(any(ANCHOR_BUSHING).missing(), replace()),
          when(
              old(ANCHOR_BUSHING).seen("worn", "loose"),
              replace().of(old(ANCHOR_BUSHING)),
              replace().of(old(ANCHOR_PIN).where("layout.anchorPins=removable"))),
          when(fresh(ANCHOR_BUSHING).seen("loose"), again(), replace().of(old(SPIDER))),
          when(fresh(ANCHOR_BUSHING).seen("worn"), replace()),
          when(
              fresh(ANCHOR_BUSHING),
              replace().of(old(ANCHOR_BUSHING)),
              look("anchorBoreWorn").of(old(SPIDER))),
          when(any(ANCHOR_PIN_RETAINER).missing(), replace()),
          when(any(ANCHOR_PIN_RETAINER).seen("worn"), replace()),
          when(old(ANCHOR_PIN_RETAINER).disturbed(), replace()),
          when(any(ANCHOR_PIN).renewed(), replace().of(old(ANCHOR_PIN_RETAINER))),
          when(
              any(ANCHOR_PIN).missing().where("layout.anchorPins=removable"),
              replace().of(old(ANCHOR_PIN)),
              replace().of(old(ANCHOR_BUSHING))),
          when(any(ANCHOR_BUSHING).missing(), replace().of(old(ANCHOR_BUSHING))));

  static final Group GROUP =
      new Group(POINTS, FIGURES, join(SPIDER_SENTENCES, PIN_SENTENCES, BUSHING_SENTENCES));

  private AnchorParts() {}
}
