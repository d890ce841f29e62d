package org.brakerules.harness.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Set;
import java.util.stream.Collectors;
import org.brakerules.BrakeRules;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.CamshaftSeal;
import org.brakerules.model.part.LipDirection;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.SealKind;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.reading.Station;
import org.junit.jupiter.api.Test;

/** The picture shows a lip the way the rules want it, and no other. */
class LipToFaceTest {

  private static final WheelEndPath LEFT = WheelEndPath.of(2, Side.LEFT);

  @Test
  void a_lip_is_wrong_in_the_picture_exactly_where_the_rules_condemn_a_new_seal_for_it() {
    for (CamshaftLayout layout : CamshaftLayout.values()) {
      for (Station station : PartKind.CAMSHAFT_SEAL.stations()) {
        for (SealKind kind : SealKind.values()) {
          for (LipDirection lip : LipDirection.values()) {
            assertThat(LipToFace.of(layout, station, kind).forbids(lip))
                .as("%s, %s, %s, lip %s", layout, station, kind, lip)
                .isEqualTo(isCondemned(layout, station, kind, lip));
          }
        }
      }
    }
  }

  private static boolean isCondemned(
      CamshaftLayout layout, Station station, SealKind kind, LipDirection lip) {
    BrakeJob job =
        BrakeJob.builder()
            .date(LocalDate.of(2026, 11, 24))
            .ruleSet("us-federal")
            .scope(Scope.CAMSHAFT_OUT)
            .wheelEnd(
                LEFT,
                Layout.of(layout).build(),
                CamshaftSeal.fittedNew(LEFT, station).kind(kind).lip(lip).build())
            .build();
    Set<Disposition> dispositions =
        BrakeRules.standard()
            .decide(job)
            .decision(LEFT.place(PartKind.CAMSHAFT_SEAL, station))
            .stream()
            .map(one -> one.disposition())
            .collect(Collectors.toSet());
    return dispositions.contains(Disposition.REPLACE);
  }
}
