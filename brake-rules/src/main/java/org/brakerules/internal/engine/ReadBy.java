package org.brakerules.internal.engine;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.brakerules.internal.fact.BeyondLimit;
import org.brakerules.internal.fact.Brake;
import org.brakerules.internal.table.Property;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.PartKind;
import org.drools.model.SingleConstraint;

/** Everything a rule reads of a job, by the names the tables use. */
final class ReadBy {

  private ReadBy() {}

  /** Points such as {@code camshaft.crack}, {@code layout.camshaft}, and ids of limits. */
  static List<String> rule(List<Conditions.Step> steps) {
    return steps.stream().flatMap(ReadBy::step).distinct().sorted().toList();
  }

  private static Stream<String> step(Conditions.Step step) {
    return step.constraints().stream().flatMap(one -> constraint(step.factType(), one));
  }

  private static Stream<String> constraint(Class<?> fact, SingleConstraint constraint) {
    if (fact == BeyondLimit.class) {
      return Conditions.literals(constraint).stream();
    }
    Stream<String> properties = Conditions.properties(constraint).stream();
    if (fact == Brake.class) {
      return properties
          .flatMap(name -> Property.of(Layout.class, name).stream())
          .map(property -> "layout." + property.idName());
    }
    return kind(fact).stream()
        .flatMap(
            kind ->
                properties
                    .flatMap(name -> Property.of(kind, name).stream())
                    .map(property -> kind.id() + "." + property.idName()));
  }

  private static Optional<PartKind> kind(Class<?> fact) {
    return Arrays.stream(PartKind.values()).filter(kind -> kind.recordType() == fact).findFirst();
  }
}
