package org.brakerules.internal.decide;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.brakerules.internal.fact.BeyondLimit;
import org.brakerules.internal.fact.Disturbed;
import org.brakerules.internal.fact.ReadingsContradict;
import org.brakerules.internal.fact.Replaced;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.part.Part;
import org.brakerules.model.reading.Reading;

/** Fills the names in a rule's sentence with what this job found. */
final class Wording {

  private static final Pattern NAME = Pattern.compile("\\{(\\w+)}");

  private Wording() {}

  static String fill(String sentence, Part part, List<Object> facts) {
    Map<String, String> values = values(part, facts);
    Matcher matcher = NAME.matcher(sentence);
    return matcher.replaceAll(
        name -> Matcher.quoteReplacement(values.getOrDefault(name.group(1), name.group())));
  }

  private static Map<String, String> values(Part part, List<Object> facts) {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("part", part.place().inWords());
    values.put("wheelEnd", part.wheelEnd().toString());
    for (Object fact : facts) {
      if (fact instanceof BeyondLimit beyond) {
        measured(values, beyond.check());
      } else if (fact instanceof Replaced replaced) {
        values.put("replaced", replaced.partKind().inWords());
      } else if (fact instanceof Disturbed disturbed) {
        values.put("disturbed", disturbed.part().inWords());
      } else if (fact instanceof ReadingsContradict two) {
        values.put("reading", two.reading());
        values.put("otherReading", two.otherReading());
      }
    }
    return values;
  }

  private static void measured(Map<String, String> values, Check check) {
    values.put("measured", check.reading().map(Reading::written).orElse(""));
    values.put("limit", check.limit().map(LimitInForce::inWords).orElse(""));
    values.put("beyondBy", check.margin().map(Object::toString).orElse(""));
    values.put("station", check.reading().map(one -> one.station().inWords()).orElse(""));
  }
}
