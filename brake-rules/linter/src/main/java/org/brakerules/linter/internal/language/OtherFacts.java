package org.brakerules.linter.internal.language;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.model.layout.AdjusterKind;
import org.brakerules.model.layout.AnchorPins;
import org.brakerules.model.layout.ArmKind;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.AxleMatter;
import org.brakerules.model.layout.CamshaftLayout;
import org.brakerules.model.layout.ClevisDesign;
import org.brakerules.model.layout.DrumMount;
import org.brakerules.model.layout.Fitted;
import org.brakerules.model.layout.LiningFastening;
import org.brakerules.model.layout.LiningPieces;
import org.brakerules.model.layout.ShoeWebs;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.Hand;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Scope;
import org.brakerules.model.part.WheelEndPath;
import org.brakerules.model.reading.Contradiction;
import org.brakerules.model.reading.Station;

/**
 * The facts that are no parts. The linter runs before they are compiled, so it keeps their
 * properties itself.
 */
public final class OtherFacts {

  static final List<FactType> ALL =
      List.of(
          fact(
              Vocabulary.BRAKE,
              Map.ofEntries(
                  Map.entry("automaticAdjuster", Fitted.class),
                  Map.entry("axleKind", AxleKind.class),
                  Map.entry("scope", Scope.class),
                  Map.entry("camshaft", CamshaftLayout.class),
                  Map.entry("camshaftHand", Hand.class),
                  Map.entry("anchorPins", AnchorPins.class),
                  Map.entry("drumMount", DrumMount.class),
                  Map.entry("adjuster", AdjusterKind.class),
                  Map.entry("arm", ArmKind.class),
                  Map.entry("clevis", ClevisDesign.class),
                  Map.entry("webs", ShoeWebs.class),
                  Map.entry("liningPieces", LiningPieces.class),
                  Map.entry("liningFastening", LiningFastening.class),
                  Map.entry("springBrake", Fitted.class),
                  Map.entry("sensor", Fitted.class))),
          fact(
              Vocabulary.BEYOND_LIMIT,
              Map.of(
                  "limit",
                  String.class,
                  "partKind",
                  PartKind.class,
                  "station",
                  Station.class,
                  "condition",
                  Condition.class)),
          fact(Vocabulary.REPLACED, Map.of("partKind", PartKind.class)),
          fact(
              Vocabulary.DISTURBED,
              Map.of(
                  "partKind",
                  PartKind.class,
                  "station",
                  Station.class,
                  "condition",
                  Condition.class)),
          fact(Vocabulary.UNLIKE_PARTNER, Map.of("matter", AxleMatter.class)),
          fact(
              Vocabulary.READINGS_CONTRADICT,
              Map.of("contradiction", Contradiction.class, "station", Station.class)));

  private OtherFacts() {}

  /** Their names in a sentence, the last two joined by a word such as {@code and}. */
  public static String inWords(String lastJoin) {
    List<String> names = ALL.stream().map(FactType::name).toList();
    int last = names.size() - 1;
    return String.join(", ", names.subList(0, last)) + " " + lastJoin + " " + names.get(last);
  }

  private static FactType fact(String name, Map<String, Class<?>> own) {
    Map<String, Class<?>> properties = new HashMap<>(own);
    properties.put(Vocabulary.WHEEL_END, WheelEndPath.class);
    properties.put(Vocabulary.PARTNER, WheelEndPath.class);
    return new FactType(name, Optional.empty(), Map.copyOf(properties));
  }
}
