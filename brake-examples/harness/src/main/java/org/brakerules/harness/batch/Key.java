package org.brakerules.harness.batch;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.stream.Stream;
import org.brakerules.BrakeRules;
import org.brakerules.Rule;
import org.brakerules.harness.batch.GeneralRules.GeneralRule;
import org.brakerules.harness.batch.LimitNames.Value;
import org.brakerules.harness.reference.RuleBaseFiles;
import org.brakerules.model.decision.RuleBaseVersion;
import org.brakerules.model.decision.Source;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.decision.Verdict;

/** The first line of the compact form: everything the lines behind it name, once. */
final class Key {

  /** The source of a limit that the maker of the part states in the job. */
  static final String MAKER = "MAKER";

  /** Raised when a line of the compact form comes to mean something else. */
  private static final int FORM = 1;

  private final BrakeRules rules;
  private final RuleBaseFiles files = RuleBaseFiles.ofThisArtifact();
  private final ObjectNode key = JsonNodeFactory.instance.objectNode();

  private Key(BrakeRules rules) {
    this.rules = rules;
  }

  /** The key of a rule base, on one line with its line feed. */
  static String of(BrakeRules rules, LimitNames limits) {
    return new Key(rules).line(limits);
  }

  private String line(LimitNames limits) {
    key.put("key", FORM);
    RuleBaseVersion version = rules.version();
    key.putObject("ruleBase")
        .put("version", version.version())
        .put("fingerprint", version.fingerprint());
    rules();
    limits(limits);
    points();
    cautions();
    sources();
    return key + "\n";
  }

  private void rules() {
    ObjectNode all = key.putObject("rules");
    GeneralRules.ALL.forEach(rule -> general(rule, all.putObject(rule.id())));
    rules.rules().forEach(rule -> rule(rule, all.putObject(rule.id())));
  }

  private static void general(GeneralRule rule, ObjectNode json) {
    json.put("title", rule.title()).put("verdict", Names.of(rule.verdict()));
    putUnlessEmpty("action", rule.action(), json);
    json.putArray("source").add(GeneralRules.SOURCE);
  }

  private static void rule(Rule rule, ObjectNode json) {
    Verdict verdict = rule.verdict();
    json.put("title", rule.title())
        .put("verdict", Names.of(verdict))
        .put("because", rule.because());
    putUnlessEmpty("action", rule.action(), json);
    addAll(rule.source().stream().map(Source::citation), json.putArray("source"));
  }

  private void limits(LimitNames names) {
    ObjectNode all = key.putObject("limits");
    names.all().forEach((value, name) -> limit(value, all.putObject(name)));
  }

  private static void limit(Value value, ObjectNode json) {
    json.put("comparison", Names.of(value.comparison()));
    putUnlessEmpty("value", value.written(), json);
    json.put("source", value.citation());
  }

  private void points() {
    ObjectNode all = key.putObject("points");
    for (String component : rules.components()) {
      files
          .rows(component + "/" + component + ".points.csv")
          .forEach(row -> point(row, all.putObject(row.get("id"))));
    }
  }

  private static void point(RuleBaseFiles.Row row, ObjectNode json) {
    json.put("part", row.get("part")).put("property", row.get("property"));
    putUnlessEmpty("instrument", row.get("instrument"), json);
    putUnlessEmpty("how", row.get("how"), json);
  }

  private void cautions() {
    ObjectNode all = key.putObject("cautions");
    for (RuleBaseFiles.Row row : files.rows("cautions.csv")) {
      ObjectNode caution = all.putObject(row.get("id")).put("text", row.get("text"));
      addAll(row.names("source").stream(), caution.putArray("source"));
    }
  }

  private void sources() {
    ObjectNode all = key.putObject("sources");
    source(GeneralRules.SOURCE, GeneralRules.SOURCE_TITLE, Standing.DERIVED, all);
    source(MAKER, "The document that the limit on the line names", Standing.MAKER, all);
    for (RuleBaseFiles.Row row : files.rows("sources.csv")) {
      ObjectNode source = all.putObject(row.get("id"));
      source.put("title", row.get("title")).put("standing", row.get("standing"));
      putUnlessEmpty("ruleSet", row.get("rule-set"), source);
    }
  }

  private static void source(String id, String title, Standing standing, ObjectNode all) {
    all.putObject(id).put("title", title).put("standing", Names.of(standing));
  }

  private static void putUnlessEmpty(String name, String text, ObjectNode json) {
    if (!text.isEmpty()) {
      json.put(name, text);
    }
  }

  private static void addAll(Stream<String> texts, ArrayNode array) {
    List<String> all = texts.toList();
    all.forEach(array::add);
  }
}
