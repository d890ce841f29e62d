package org.brakerules.internal.engine;

import java.util.List;
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

  private static Stream<String> ofBrake(String name) {
    return name.equals("automaticAdjuster")
        ? Stream.of("vehicle.built-on")
        : Property.of(Layout.class, name).map(property -> "layout." + property.idName()).stream();
  }

  private static Stream<String> constraint(Class<?> fact, SingleConstraint constraint) {
    if (fact == BeyondLimit.class) {
      return Conditions.literals(constraint).stream();
    }
    Stream<String> properties = Conditions.properties(constraint).stream();
    if (fact == Brake.class) {
      return properties.flatMap(ReadBy::ofBrake);
    }
    return PartKind.of(fact).stream()
        .flatMap(
            kind ->
                properties
                    .flatMap(name -> Property.of(kind, name).stream())
                    .map(property -> kind.id() + "." + property.idName()));
  }
}
