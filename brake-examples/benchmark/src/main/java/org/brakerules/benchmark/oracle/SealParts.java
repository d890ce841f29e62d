package org.brakerules.benchmark.oracle;

import static org.brakerules.benchmark.oracle.Effect.again;
import static org.brakerules.benchmark.oracle.Effect.clean;
import static org.brakerules.benchmark.oracle.Effect.look;
import static org.brakerules.benchmark.oracle.Effect.replace;
import static org.brakerules.benchmark.oracle.Sentence.when;
import static org.brakerules.benchmark.oracle.Sentence.whenRenewed;
import static org.brakerules.benchmark.oracle.Subject.any;
import static org.brakerules.benchmark.oracle.Subject.old;
import static org.brakerules.benchmark.oracle.Trade.join;
import static org.brakerules.model.part.PartKind.CAMSHAFT_BRACKET;
import static org.brakerules.model.part.PartKind.CAMSHAFT_BUSHING;
import static org.brakerules.model.part.PartKind.CAMSHAFT_SEAL;
import static org.brakerules.model.part.PartKind.DRUM;
import static org.brakerules.model.part.PartKind.GREASE_FITTING;
import static org.brakerules.model.part.PartKind.LINING;
import static org.brakerules.model.part.PartKind.SLACK_ADJUSTER;
import static org.brakerules.model.reading.Station.ADJUSTER;
import static org.brakerules.model.reading.Station.HEAD_END;
import static org.brakerules.model.reading.Station.SPLINE_END;
import static org.brakerules.model.reading.Station.TUBE;

import java.util.List;
import org.brakerules.benchmark.oracle.Trade.Group;

/** The seals of the camshaft, the bracket that carries it, and the grease fittings. */
final class SealParts {

  private static final List<Point> POINTS =
      join(
          Point.read(
              CAMSHAFT_SEAL,
              """
              camshaft-out | always |  | layout.camshaft kind cut
              camshaft-out | always | part.kind=one-lip/main-and-dust-lip/unknown | lip
              camshaft-out | on-demand | part.kind=one-lip/main-and-dust-lip/unknown | lipUnlikeMakerShows
              camshaft-out | always | part.condition=as-found | worn
              """),
          Point.read(
              CAMSHAFT_BRACKET,
              """
              wheel-on | always | part.condition=as-found | cracked rustedThrough bent
              wheel-on | always |  | loose
              camshaft-out | always | part.condition=as-found | sealBoreWorn
              camshaft-out | on-demand |  | bushingBoreWorn
              """),
          Point.read(
              GREASE_FITTING,
              """
              wheel-on | always | part.condition=as-found | blocked hardGrease
              wheel-on | always |  | takesNoGrease
              wheel-on | on-demand |  | purgeSideDry
              """));

  /** Both bushings of a tube sit in it; the one at the spline always sits in tube or bracket. */
  private static final Subject HEAD_BUSHING_IN_TUBE =
      any(CAMSHAFT_BUSHING).at(HEAD_END).where("layout.camshaft=tube");

  private static final Subject SPLINE_BUSHING = any(CAMSHAFT_BUSHING).at(SPLINE_END);

  /** All but O-rings, which have no direction. */
  private static final Subject LIP_SEAL = any(CAMSHAFT_SEAL).unless("part.kind=o-ring");

  /**
   * Every lip of a tube faces the adjuster, and so does every lip at a split layout's spider. At a
   * split layout's bracket and in a closed layout the maker alone says.
   */
  private static final Subject REVERSED = LIP_SEAL.where("part.lip=toward-head");

  private static final List<Sentence> SEAL_SENTENCES =
      List.of(
          when(any(CAMSHAFT_SEAL).missing(), replace("CAMSHAFT-SEAL-180")),
          when(any(CAMSHAFT_SEAL).seen("cut", "worn"), replace("CAMSHAFT-SEAL-050")),
          when(
              old(CAMSHAFT_SEAL).where("part.kind=o-ring").disturbed(),
              replace("CAMSHAFT-SEAL-040")),
          when(REVERSED.at(HEAD_END).where("layout.camshaft=tube"), replace("CAMSHAFT-SEAL-060")),
          when(REVERSED.at(SPLINE_END).where("layout.camshaft=tube"), replace("CAMSHAFT-SEAL-070")),
          when(REVERSED.at(HEAD_END).where("layout.camshaft=split"), replace("CAMSHAFT-SEAL-080")),
          when(
              REVERSED.at(HEAD_END).where("layout.camshaft=tube/split; part.condition=as-found"),
              look("CAMSHAFT-SEAL-120", "greaseSoaked").of(old(LINING)),
              look("CAMSHAFT-SEAL-130", "soaked").of(old(DRUM))),
          when(
              REVERSED.at(SPLINE_END).where("layout.camshaft=tube; part.condition=as-found"),
              look("CAMSHAFT-SEAL-140", "greaseSoaked").of(old(LINING)),
              look("CAMSHAFT-SEAL-150", "soaked").of(old(DRUM))),
          when(
              LIP_SEAL.at(SPLINE_END).where("layout.camshaft=split; part.condition=new"),
              look("CAMSHAFT-SEAL-100", "lipUnlikeMakerShows")),
          when(
              LIP_SEAL.where("layout.camshaft=closed; part.condition=new"),
              look("CAMSHAFT-SEAL-110", "lipUnlikeMakerShows")),
          when(LIP_SEAL.seen("lipUnlikeMakerShows"), replace("CAMSHAFT-SEAL-090")),
          when(
              LIP_SEAL.seen("lipUnlikeMakerShows").at(HEAD_END).where("part.condition=as-found"),
              look("CAMSHAFT-SEAL-160", "greaseSoaked").of(old(LINING)),
              look("CAMSHAFT-SEAL-170", "soaked").of(old(DRUM))));

  private static final List<Sentence> BRACKET_AND_FITTING_SENTENCES =
      List.of(
          when(any(CAMSHAFT_BRACKET).missing(), replace("CAMSHAFT-BRACKET-050")),
          when(
              any(CAMSHAFT_BRACKET).seen("cracked", "bent", "rustedThrough"),
              replace("CAMSHAFT-BRACKET-010")),
          when(any(CAMSHAFT_BRACKET).seen("loose"), replace("CAMSHAFT-BRACKET-020")),
          when(any(CAMSHAFT_BRACKET).seen("sealBoreWorn"), replace("CAMSHAFT-BRACKET-030")),
          when(
              any(CAMSHAFT_BRACKET).seen("bushingBoreWorn"),
              replace("CAMSHAFT-BRACKET-040"),
              replace("CAMSHAFT-BUSHING-090").of(SPLINE_BUSHING),
              replace("CAMSHAFT-BUSHING-100").of(HEAD_BUSHING_IN_TUBE)),
          whenRenewed(
              CAMSHAFT_BRACKET,
              replace("CAMSHAFT-BRACKET-060").of(SPLINE_BUSHING),
              replace("CAMSHAFT-BRACKET-070").of(HEAD_BUSHING_IN_TUBE)),
          when(any(GREASE_FITTING).missing(), replace("GREASE-FITTING-010")),
          when(any(GREASE_FITTING).seen("blocked"), clean("GREASE-FITTING-020")),
          when(
              any(GREASE_FITTING).seen("takesNoGrease", "hardGrease"), clean("GREASE-FITTING-030")),
          when(
              any(GREASE_FITTING).seen("takesNoGrease"),
              again("GREASE-FITTING-040", "takesNoGrease"),
              look("GREASE-FITTING-060", "greaseHoleOutOfLine")
                  .of(CAMSHAFT_BUSHING)
                  .atSameStation(),
              look("GREASE-FITTING-080", "lip").of(LIP_SEAL).atSameStation()),
          when(
              any(GREASE_FITTING).seen("takesNoGrease").at(TUBE),
              look("GREASE-FITTING-050", "greaseHoleOutOfLine").of(CAMSHAFT_BUSHING),
              look("GREASE-FITTING-070", "lip").of(LIP_SEAL.at(SPLINE_END))),
          when(
              any(GREASE_FITTING).seen("takesNoGrease").at(ADJUSTER),
              look("GREASE-FITTING-090", "takesNoGrease").of(SLACK_ADJUSTER)),
          when(
              any(GREASE_FITTING).seen("purgeSideDry"),
              again("GREASE-FITTING-100", "purgeSideDry")));

  static final Group GROUP = new Group(POINTS, join(SEAL_SENTENCES, BRACKET_AND_FITTING_SENTENCES));

  private SealParts() {}
}
