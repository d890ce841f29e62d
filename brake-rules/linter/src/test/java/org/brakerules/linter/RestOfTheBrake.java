package org.brakerules.linter;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.linter.internal.language.ModelProperty;
import org.brakerules.linter.internal.language.Words;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.PartKind;

/**
 * A rule for every kind of part and every state of a layout, with the points they read, so that the
 * small rule base leaves nothing of the brake out.
 */
final class RestOfTheBrake {

  private static final String HEADER =
      SmallRuleBase.POINTS.lines().findFirst().orElseThrow() + "\n";

  private static final Set<String> ELSEWHERE =
      Set.of("camshaft.crack", "camshaft.turns-freely", "drum.soaked");

  private RestOfTheBrake() {}

  static void writeTo(SmallRuleBase base) throws IOException {
    List<String> rules = new ArrayList<>();
    for (PartKind kind : PartKind.values()) {
      rules.add(rule(rules.size() + 1, kind.inWords(), "$part : " + anySign(kind)));
      String folder = "rest-" + kind.id();
      base.write("%s/%s.points.csv".formatted(folder, folder), points(folder, kind));
    }
    rules.add(rule(rules.size() + 1, "brake", anyLayout()));
    base.write("rest-layout/rest-layout.points.csv", layoutPoints());
    base.write("rest/rest.drl", SmallRuleBase.HEADER + String.join("", rules));
  }

  private static String rule(int number, String what, String conditions) {
    return """
        rule "REST-%03d Anything about the %s"
          @source("COMMON-PRACTICE")
          @because("Something is seen.")
          @action("Replace the {part}.")
        when
          %s
        then
          verdict.replace( $part );
        end
        """
        .formatted(10 * number, what, conditions);
  }

  private static String anySign(PartKind kind) {
    return statedOf(kind)
        .map(property -> property.name() + " == " + firstValue(property))
        .collect(Collectors.joining(" || ", kind.recordType().getSimpleName() + "( ", " )"));
  }

  private static String firstValue(ModelProperty property) {
    return property.isSign()
        ? "Sign.SEEN"
        : property.type().getSimpleName() + "." + property.type().getEnumConstants()[0];
  }

  private static String anyLayout() {
    return states()
            .map(state -> "%s != %s.UNKNOWN".formatted(state.name(), state.type().getSimpleName()))
            .collect(Collectors.joining(", ", "Brake( $wheelEnd : wheelEnd, ", " )"))
        + "\n  $part : Spider( wheelEnd == $wheelEnd )";
  }

  private static String points(String folder, PartKind kind) {
    return statedOf(kind)
        .filter(one -> !ELSEWHERE.contains(kind.id() + "." + Words.ofProperty(one.name())))
        .map(one -> point(folder, kind.id(), one.name(), one.isSign() ? "fault" : "fact"))
        .collect(Collectors.joining("", HEADER, ""));
  }

  private static String layoutPoints() {
    return states()
        .map(state -> point("rest-layout", "spider", "layout." + state.name(), "fact"))
        .collect(Collectors.joining("", HEADER, ""));
  }

  private static String point(String folder, String part, String property, String finds) {
    return "%s.%s,%s,%s,,wheel-on,,always,at-rest,%s,eye,Look.\n"
        .formatted(folder, Words.ofProperty(property), part, property, finds);
  }

  private static Stream<ModelProperty> statedOf(PartKind kind) {
    return ModelProperty.of(kind).stream().filter(property -> property.type().isEnum());
  }

  private static Stream<ModelProperty> states() {
    return ModelProperty.of(Layout.class).stream().filter(one -> one.type().isEnum());
  }
}
