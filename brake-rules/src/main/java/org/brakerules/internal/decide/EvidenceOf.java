package org.brakerules.internal.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakerules.internal.engine.Finding;
import org.brakerules.internal.fact.BeyondLimit;
import org.brakerules.internal.fact.Brake;
import org.brakerules.internal.fact.Disturbed;
import org.brakerules.internal.fact.ReadingsContradict;
import org.brakerules.internal.fact.Replaced;
import org.brakerules.internal.fact.UnlikePartner;
import org.brakerules.internal.table.Names;
import org.brakerules.internal.table.Property;
import org.brakerules.model.decision.Evidence;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Part;
import org.brakerules.model.part.Sign;

/** What a rule that spoke rests on, read from the facts its conditions matched. */
final class EvidenceOf {

  private EvidenceOf() {}

  static List<Evidence> finding(Finding finding) {
    List<Evidence> evidence = new ArrayList<>();
    for (Object fact : finding.facts()) {
      if (fact instanceof BeyondLimit beyond) {
        addOnce(evidence, new Evidence.Measured(beyond.check()));
      } else if (fact instanceof Replaced replaced) {
        addOnce(evidence, new Evidence.AlsoReplaced(replaced.wheelEnd(), replaced.partKind()));
      } else if (fact instanceof Disturbed disturbed) {
        addOnce(evidence, new Evidence.WasDisturbed(disturbed.part()));
      } else if (fact instanceof UnlikePartner unlike) {
        addOnce(evidence, new Evidence.UnlikePartner(unlike.wheelEnd(), unlike.matter()));
      } else if (fact instanceof ReadingsContradict two) {
        addOnce(
            evidence,
            new Evidence.ReadingsContradict(
                two.part(), two.contradiction(), two.reading(), two.otherReading()));
      } else if (fact instanceof Brake brake) {
        built(finding, brake, evidence);
      } else if (fact instanceof Part part) {
        stated(finding, part, evidence);
      }
    }
    return evidence;
  }

  /** There are never more than a few. */
  private static void addOnce(List<Evidence> evidence, Evidence one) {
    if (!evidence.contains(one)) {
      evidence.add(one);
    }
  }

  private static void built(Finding finding, Brake brake, List<Evidence> evidence) {
    for (String name : finding.rule().conditionsOn(Brake.class)) {
      if (name.equals("automaticAdjuster")) {
        addOnce(
            evidence,
            new Evidence.Built(brake.wheelEnd(), name, Names.of(brake.automaticAdjuster())));
      }
      Property.of(Layout.class, name)
          .ifPresent(
              property ->
                  addOnce(
                      evidence,
                      new Evidence.Built(
                          brake.wheelEnd(), name, nameOf(property, brake.layout()))));
    }
  }

  /** What was not seen says nothing where something else was. */
  private static void stated(Finding finding, Part part, List<Evidence> evidence) {
    List<Property> looked = looked(finding, part);
    boolean anySeen = false;
    for (Property property : looked) {
      anySeen |= property.valueOf(part) == Sign.SEEN;
    }
    for (Property property : looked) {
      if (!(anySeen && property.valueOf(part) == Sign.NOT_SEEN)) {
        addOnce(
            evidence, new Evidence.Stated(part.place(), property.name(), nameOf(property, part)));
      }
    }
  }

  private static List<Property> looked(Finding finding, Part part) {
    List<Property> looked = new ArrayList<>();
    for (String name : finding.rule().conditionsOn(part.getClass())) {
      Optional<Property> property = Property.of(part.partKind(), name);
      if (property.isPresent()
          && !property.get().isMeasurement()
          && property.get().valueOf(part) != Sign.NOT_CHECKED) {
        looked.add(property.get());
      }
    }
    return looked;
  }

  private static String nameOf(Property property, Object holder) {
    return Names.of((Enum<?>) property.valueOf(holder));
  }
}
