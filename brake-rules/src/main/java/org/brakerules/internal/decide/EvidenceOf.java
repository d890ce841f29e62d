package org.brakerules.internal.decide;

import java.util.ArrayList;
import java.util.List;
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
        evidence.add(new Evidence.Measured(beyond.check()));
      } else if (fact instanceof Replaced replaced) {
        evidence.add(new Evidence.AlsoReplaced(replaced.wheelEnd(), replaced.partKind()));
      } else if (fact instanceof Disturbed disturbed) {
        evidence.add(new Evidence.WasDisturbed(disturbed.part()));
      } else if (fact instanceof UnlikePartner unlike) {
        evidence.add(new Evidence.UnlikePartner(unlike.wheelEnd(), unlike.matter()));
      } else if (fact instanceof ReadingsContradict two) {
        evidence.add(
            new Evidence.ReadingsContradict(
                two.part(), two.contradiction(), two.reading(), two.otherReading()));
      } else if (fact instanceof Brake brake) {
        built(finding, brake, evidence);
      } else if (fact instanceof Part part) {
        stated(finding, part, evidence);
      }
    }
    return evidence.stream().distinct().toList();
  }

  private static void built(Finding finding, Brake brake, List<Evidence> evidence) {
    for (String name : finding.rule().conditionsOn(Brake.class)) {
      if (name.equals("automaticAdjuster")) {
        evidence.add(
            new Evidence.Built(brake.wheelEnd(), name, Names.of(brake.automaticAdjuster())));
      }
      Property.of(Layout.class, name)
          .ifPresent(
              property ->
                  evidence.add(
                      new Evidence.Built(
                          brake.wheelEnd(), name, nameOf(property, brake.layout()))));
    }
  }

  private static void stated(Finding finding, Part part, List<Evidence> evidence) {
    List<Property> looked =
        finding.rule().conditionsOn(part.getClass()).stream()
            .flatMap(name -> Property.of(part.partKind(), name).stream())
            .filter(property -> !property.isMeasurement())
            .filter(property -> property.valueOf(part) != Sign.NOT_CHECKED)
            .toList();
    boolean anySeen = looked.stream().anyMatch(property -> property.valueOf(part) == Sign.SEEN);
    looked.stream()
        .filter(property -> !(anySeen && property.valueOf(part) == Sign.NOT_SEEN))
        .map(one -> new Evidence.Stated(part.place(), one.name(), nameOf(one, part)))
        .forEach(evidence::add);
  }

  private static String nameOf(Property property, Object holder) {
    return Names.of((Enum<?>) property.valueOf(holder));
  }
}
