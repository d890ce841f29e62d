package org.brakerules.benchmark.oracle;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.brakerules.model.layout.AdjusterKind;
import org.brakerules.model.layout.AnchorPins;
import org.brakerules.model.layout.ArmKind;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.layout.ChamberFamily;
import org.brakerules.model.layout.ClevisDesign;
import org.brakerules.model.layout.DrumMount;
import org.brakerules.model.layout.Fitted;
import org.brakerules.model.layout.LiningFastening;
import org.brakerules.model.layout.LiningPieces;
import org.brakerules.model.layout.ShoeWebs;
import org.brakerules.model.layout.StrokeClass;
import org.brakerules.model.part.Hand;
import org.brakerules.model.part.Sign;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.reading.Station;

/**
 * One thing that tells how a brake is built, by the path that the tables write.
 *
 * @param path such as {@code layout.camshaft}
 * @param type what its values are
 * @param read its value at a wheel end; {@link #UNSTATED} or a constant of that meaning if the job
 *     does not state it
 */
record BrakeState(String path, Class<?> type, Function<WheelEndView, Object> read) {

  /** The value of a text, length or day that the job does not state. */
  static final Object UNSTATED = "";

  static final List<BrakeState> ALL =
      List.of(
          new BrakeState("axle.kind", AxleKind.class, WheelEndView::axle),
          new BrakeState("vehicle.builtOn", LocalDate.class, end -> stated(end.builtOn())),
          new BrakeState("layout.camshaft", CamshaftLayout.class, end -> end.layout().camshaft()),
          new BrakeState("layout.camshaftHand", Hand.class, end -> end.layout().camshaftHand()),
          new BrakeState("layout.anchorPins", AnchorPins.class, end -> end.layout().anchorPins()),
          new BrakeState("layout.drumMount", DrumMount.class, end -> end.layout().drumMount()),
          new BrakeState("layout.adjuster", AdjusterKind.class, end -> end.layout().adjuster()),
          new BrakeState("layout.arm", ArmKind.class, end -> end.layout().arm()),
          new BrakeState("layout.clevis", ClevisDesign.class, end -> end.layout().clevis()),
          new BrakeState("layout.webs", ShoeWebs.class, end -> end.layout().webs()),
          new BrakeState(
              "layout.liningPieces", LiningPieces.class, end -> end.layout().liningPieces()),
          new BrakeState(
              "layout.liningFastening",
              LiningFastening.class,
              end -> end.layout().liningFastening()),
          new BrakeState(
              "layout.chamber.family", ChamberFamily.class, end -> end.layout().chamber().family()),
          new BrakeState("layout.chamber.type", String.class, end -> end.layout().chamber().type()),
          new BrakeState(
              "layout.chamber.strokeClass",
              StrokeClass.class,
              end -> end.layout().chamber().strokeClass()),
          new BrakeState(
              "layout.chamber.ratedStroke",
              Length.class,
              end -> stated(end.layout().chamber().ratedStroke())),
          new BrakeState(
              "layout.chamber.springType",
              String.class,
              end -> end.layout().chamber().springType()),
          new BrakeState(
              "layout.drumDiameter", Length.class, end -> stated(end.layout().drumDiameter())),
          new BrakeState("layout.springBrake", Fitted.class, end -> end.layout().springBrake()),
          new BrakeState("layout.sensor", Fitted.class, end -> end.layout().sensor()));

  static BrakeState of(String path) {
    return ALL.stream()
        .filter(state -> state.path.equals(path))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("A brake has no " + path + "."));
  }

  private static Object stated(Optional<?> value) {
    return value.isPresent() ? value.get() : UNSTATED;
  }

  /** Whether a value says that nothing is known. */
  static boolean isUnstated(Object value) {
    return value == Sign.NOT_CHECKED
        || value.equals(UNSTATED)
        || (value instanceof Enum<?> constant && constant.name().equals("UNKNOWN"));
  }

  /** The value that a table writes in words. */
  static Object parse(Class<?> type, String word) {
    if (type == Length.class) {
      return Length.parse(word);
    }
    if (type == Station.class) {
      return Station.byId(word).orElseThrow();
    }
    if (!type.isEnum()) {
      return word;
    }
    for (Object constant : type.getEnumConstants()) {
      if (((Enum<?>) constant).name().equals(constant(word))) {
        return constant;
      }
    }
    throw new IllegalArgumentException(type + " has no " + word + ".");
  }

  /** As Java writes a name such as {@code as-found}. */
  static String constant(String word) {
    return word.toUpperCase(Locale.ROOT).replace('-', '_');
  }
}
