package org.brakerules.internal.decide;

import java.util.Optional;
import org.brakerules.internal.engine.Finding;
import org.brakerules.internal.engine.Sentence;
import org.brakerules.internal.fact.BeyondLimit;
import org.brakerules.internal.fact.Disturbed;
import org.brakerules.internal.fact.ReadingsContradict;
import org.brakerules.internal.fact.Replaced;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.reading.Reading;

/** Fills the names in a rule's sentence with what this job found. */
final class Wording {

  private final Finding finding;

  private Wording(Finding finding) {
    this.finding = finding;
  }

  static String fill(Sentence sentence, Finding finding) {
    return sentence.filled(new Wording(finding)::valueOf);
  }

  private Optional<String> valueOf(String name) {
    return switch (name) {
      case "part" -> Optional.of(finding.part().place().inWords());
      case "wheelEnd" -> Optional.of(finding.part().wheelEnd().toString());
      default -> ofFacts(name);
    };
  }

  /** Of several facts that have such a value the last one speaks. */
  private Optional<String> ofFacts(String name) {
    for (int last = finding.facts().size() - 1; last >= 0; last--) {
      Optional<String> value = ofFact(finding.facts().get(last), name);
      if (value.isPresent()) {
        return value;
      }
    }
    return Optional.empty();
  }

  private static Optional<String> ofFact(Object fact, String name) {
    if (fact instanceof BeyondLimit beyond) {
      return measured(beyond.check(), name);
    }
    if (fact instanceof Replaced replaced && name.equals("replaced")) {
      return Optional.of(replaced.partKind().inWords());
    }
    if (fact instanceof Disturbed disturbed && name.equals("disturbed")) {
      return Optional.of(disturbed.part().inWords());
    }
    return fact instanceof ReadingsContradict two ? contradicting(two, name) : Optional.empty();
  }

  private static Optional<String> contradicting(ReadingsContradict two, String name) {
    return switch (name) {
      case "reading" -> Optional.of(two.reading());
      case "otherReading" -> Optional.of(two.otherReading());
      default -> Optional.empty();
    };
  }

  private static Optional<String> measured(Check check, String name) {
    return switch (name) {
      case "measured" -> Optional.of(check.reading().map(Reading::written).orElse(""));
      case "limit" -> Optional.of(check.limit().map(LimitInForce::inWords).orElse(""));
      case "beyondBy" -> Optional.of(check.margin().map(Object::toString).orElse(""));
      case "station" -> Optional.of(check.reading().map(one -> one.station().inWords()).orElse(""));
      default -> Optional.empty();
    };
  }
}
