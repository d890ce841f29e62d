package org.brakerules.linter.internal.cases;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import org.brakerules.linter.cases.CaseChanges;

/** The keys of a case, in the order of the page for authors. */
public enum CaseKey {
  CASE("case", CaseKey::isText, "Cracked camshaft is replaced"),
  JOB("job", JsonNode::isObject, "{ scope: wheel-on }"),
  UNIT("unit", JsonNode::isObject, "{ builtOn: 2019-03-01 }"),
  AXLE("axle", JsonNode::isObject, "{ kind: steer }"),
  LAYOUT("layout", JsonNode::isObject, "{ camshaft: split }"),
  CHANGE("change", CaseKey::isOfParts, "{ camshaft: { crack: seen } }"),
  REMOVE("remove", CaseKey::isList, "[camshaft]"),
  PARTNER("partner", CaseKey::isPartner, "{ camshaft: { crack: seen } }, or partner: none"),
  PARTNER_LAYOUT("partnerLayout", JsonNode::isObject, "{ camshaft: split }"),
  FIRES("fires", CaseKey::isList, "[CAMSHAFT-010]"),
  NEAR("near", CaseKey::isList, "[CAMSHAFT-010]"),
  FAILS("fails", CaseKey::isText, "crack of the camshaft"),
  SPEAKS("speaks", CaseKey::isOfLists, "{ CAMSHAFT-010: [camshaft] }"),
  THEN("then", CaseKey::isOfTexts, "{ camshaft: replace }"),
  ALSO("also", CaseKey::isOfLists, "{ replace: [camshaft-seal/head-end] }"),
  HOLDS("holds", CaseKey::isList, "[camshaft]"),
  NEEDS("needs", CaseKey::isList, "[camshaft.crack]"),
  ROAD("road", CaseKey::isOfTexts, "{ camshaft: silent }"),
  SOURCE("source", CaseKey::isText, "TM 5-4210-220-12 4-30.4, verified");

  private final String word;

  @SuppressWarnings("ImmutableEnumChecker") // references to static methods
  private final Predicate<JsonNode> form;

  private final String example;

  CaseKey(String word, Predicate<JsonNode> form, String example) {
    this.word = word;
    this.form = form;
    this.example = example;
  }

  /** The key as it is written. */
  public String word() {
    return word;
  }

  /** All keys as they are written. */
  public static List<String> words() {
    return Arrays.stream(values()).map(CaseKey::word).toList();
  }

  /** Whether what stands behind it has the form that is read. */
  public boolean fits(JsonNode value) {
    return form.test(value);
  }

  /** The key with a value of the right form. */
  public String example() {
    return word + ": " + example;
  }

  private static boolean isText(JsonNode value) {
    return value.isValueNode() && !value.asText().isBlank();
  }

  private static boolean isList(JsonNode value) {
    return isText(value) || (value.isArray() && all(value, CaseKey::isText));
  }

  private static boolean isOfParts(JsonNode value) {
    return value.isObject() && all(value, JsonNode::isObject);
  }

  private static boolean isOfTexts(JsonNode value) {
    return value.isObject() && all(value, CaseKey::isText);
  }

  private static boolean isOfLists(JsonNode value) {
    return value.isObject() && all(value, CaseKey::isList);
  }

  private static boolean isPartner(JsonNode value) {
    return isOfParts(value) || value.asText().equals(CaseChanges.ALONE);
  }

  private static boolean all(JsonNode value, Predicate<JsonNode> form) {
    List<JsonNode> entries = new ArrayList<>();
    value.forEach(entries::add);
    return entries.stream().allMatch(form);
  }
}
