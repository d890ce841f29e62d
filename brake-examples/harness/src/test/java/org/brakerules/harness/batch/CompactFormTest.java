package org.brakerules.harness.batch;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.StreamSupport;
import org.brakerules.BrakeRules;
import org.brakerules.internal.decide.GeneralRule;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.json.DecisionWriter;
import org.brakerules.model.json.JobReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A line of the compact form, read with its key, tells what the whole document tells. */
class CompactFormTest {

  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final BrakeRules RULES = BrakeRules.standard();
  private static final Form FORM = CompactForm.of(RULES);

  static List<String> jobs() throws IOException {
    List<String> jobs = new ArrayList<>(DemoBatch.jobs());
    jobs.add(jobs.get(0).replace("us-federal", "us-virginia"));
    jobs.add(jobs.get(5).replace("quebec", "us-virginia"));
    jobs.add(
        jobs.get(0)
            .replace(
                "\"units\":[",
                "\"makersLimits\":[{\"limit\":\"camshaft-bushing.radial-play.max\","
                    + "\"on\":\"axle2/left\",\"value\":\"0.025 in\","
                    + "\"document\":\"Axle manual\",\"page\":\"12\"}],\"units\":["));
    return jobs;
  }

  @ParameterizedTest(name = "job {index}")
  @MethodSource("jobs")
  void line_and_key_tell_what_the_document_tells(String text) throws IOException {
    BrakeJob job = JobReader.read(text);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    FORM.write(17, job, out);
    JsonNode line = MAPPER.readTree(out.toString(StandardCharsets.UTF_8));
    JsonNode document = MAPPER.readTree(DecisionWriter.write(RULES.decide(job)));
    Spelling spelling = new Spelling(MAPPER.readTree(FORM.heading()), document);

    assertThat(line.path("line").asInt()).isEqualTo(17);
    assertThat(line.path("reference")).isEqualTo(document.path("reference"));
    assertThat(line.path("date")).isEqualTo(document.path("date"));
    assertThat(line.path("complete")).isEqualTo(document.path("complete"));
    assertThat(line.path("cautions").size()).isEqualTo(document.path("cautions").size());
    assertThat(line.path("parts").size()).isEqualTo(document.path("decisions").size());
    for (int i = 0; i < line.path("parts").size(); i++) {
      JsonNode part = line.path("parts").get(i);
      assertThat(spelling.spelledOut(part))
          .as(part.path("part").asText())
          .isEqualTo(Spelling.told(document.path("decisions").get(i)));
    }
  }

  @Test
  void the_makers_limit_of_a_job_stands_on_its_line() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    List<String> jobs = jobs();

    FORM.write(1, JobReader.read(jobs.get(jobs.size() - 1)), out);

    assertThat(out.toString(StandardCharsets.UTF_8))
        .contains(
            "\"limit\":{\"id\":\"camshaft-bushing.radial-play.max\",\"comparison\":\"at-most\","
                + "\"value\":\"0.025 in\",\"source\":\"MAKER#12\",\"document\":\"Axle manual\"}");
  }

  @Test
  void the_general_rules_are_those_of_the_rule_base() {
    assertThat(GeneralRules.ALL.stream().map(rule -> rule.id() + " " + rule.title()))
        .containsExactlyElementsOf(
            Arrays.stream(GeneralRule.values())
                .map(rule -> rule.id() + " " + rule.title())
                .toList());
  }

  @Test
  void every_limit_of_the_tables_has_a_name_of_its_own() {
    LimitNames names = new LimitNames(RULES.limits());

    assertThat(names.all().values()).doesNotHaveDuplicates().hasSizeGreaterThan(70);
  }

  /** What a line means, spelled out with the key. */
  private record Spelling(JsonNode key, JsonNode document) {

    /** The decision of a part as far as line and key tell it. */
    ObjectNode spelledOut(JsonNode part) {
      ObjectNode told = JsonNodeFactory.instance.objectNode();
      told.set("part", part.path("part"));
      told.set("disposition", part.path("disposition"));
      told.put("hold", part.path("hold").asBoolean());
      told.set("road", part.path("road"));
      ArrayNode reasons = told.putArray("reasons");
      part.path("reasons").forEach(reason -> reasons.add(reason(reason, part)));
      ArrayNode passed = told.putArray("passed");
      part.path("checks").forEach(check -> passed.add(check(check, part)));
      ArrayNode needed = told.putArray("needed");
      StreamSupport.stream(part.path("open").spliterator(), false)
          .flatMap(
              group ->
                  StreamSupport.stream(group.path("points").spliterator(), false)
                      .map(point -> point.asText() + ": " + group.path("why").asText()))
          .sorted()
          .forEach(needed::add);
      part.path("open")
          .forEach(
              group ->
                  group
                      .path("points")
                      .forEach(
                          point ->
                              assertThat(key.path("points").has(point.asText()))
                                  .as(point.asText())
                                  .isTrue()));
      return told;
    }

    private ObjectNode reason(JsonNode reason, JsonNode part) {
      JsonNode rule = key.path("rules").path(reason.path("rule").asText());
      ObjectNode told = JsonNodeFactory.instance.objectNode();
      told.set("rule", reason.path("rule"));
      told.set("title", rule.path("title"));
      told.set("verdict", reason.path("verdict"));
      ArrayNode source = told.putArray("source");
      rule.path("source").forEach(citation -> source.add(underRuleSet(citation.asText())));
      ArrayNode evidence = told.putArray("evidence");
      reason.path("evidence").forEach(one -> evidence.add(evidence(one, part)));
      return told;
    }

    private ObjectNode evidence(JsonNode evidence, JsonNode part) {
      String kind = evidence.path("kind").asText();
      if (kind.equals("measured")) {
        return check(evidence, part).put("kind", kind);
      }
      ObjectNode told = evidence.deepCopy();
      boolean ofWheelEnd = List.of("built", "also-replaced", "unlike-partner").contains(kind);
      String own = part.path("part").asText();
      if (ofWheelEnd && !told.has("wheelEnd")) {
        told.put("wheelEnd", wheelEnd(own));
      } else if (!ofWheelEnd && !told.has("part")) {
        told.put("part", own);
      }
      return told;
    }

    private static String wheelEnd(String part) {
      return part.replaceFirst("(/(?:left|right))/.*", "$1");
    }

    private ObjectNode check(JsonNode check, JsonNode part) {
      ObjectNode told = JsonNodeFactory.instance.objectNode();
      told.set("part", check.has("part") ? check.path("part") : part.path("part"));
      told.set("property", check.path("property"));
      told.set("status", check.path("status"));
      told.set("reading", check.path("reading"));
      told.set("margin", check.path("margin"));
      told.set("limit", limit(check.path("limit")));
      return told;
    }

    private ObjectNode limit(JsonNode limit) {
      JsonNode row = limit.isTextual() ? key.path("limits").path(limit.asText()) : limit;
      ObjectNode told = JsonNodeFactory.instance.objectNode();
      told.put(
          "id",
          limit.isTextual()
              ? limit.asText().replaceFirst("/\\d+$", "")
              : limit.path("id").asText());
      told.set("comparison", row.path("comparison"));
      told.set("value", row.path("value"));
      ObjectNode source = source(row.path("source").asText());
      if (row.has("document")) {
        source.set("title", row.path("document"));
      }
      told.set("source", source);
      return told;
    }

    private ObjectNode source(String citation) {
      String[] pieces = citation.split("#", 2);
      JsonNode source = key.path("sources").path(pieces[0]);
      assertThat(source.isObject()).as(citation).isTrue();
      ObjectNode told = JsonNodeFactory.instance.objectNode();
      told.put("id", pieces[0]);
      if (pieces.length > 1) {
        told.put("clause", pieces[1]);
      }
      told.set("title", source.path("title"));
      told.set("standing", source.path("standing"));
      return told;
    }

    /** A law of another place than the job's is no law there. */
    private ObjectNode underRuleSet(String citation) {
      ObjectNode told = source(citation);
      JsonNode lawOf = key.path("sources").path(told.path("id").asText()).path("ruleSet");
      boolean isLaw = told.path("standing").asText().equals("law");
      return isLaw && !lawOf.equals(document.path("ruleSet"))
          ? told.put("standing", "law-elsewhere")
          : told;
    }

    /** The same of the document: without sentences, and without how to look. */
    static ObjectNode told(JsonNode decision) {
      ObjectNode told = JsonNodeFactory.instance.objectNode();
      for (String name : List.of("part", "disposition", "hold", "road")) {
        told.set(name, decision.path(name));
      }
      ArrayNode reasons = told.putArray("reasons");
      for (JsonNode reason : decision.path("reasons")) {
        ObjectNode one = reasons.addObject();
        for (String name : List.of("rule", "title", "verdict", "source")) {
          one.set(name, reason.path(name));
        }
        ArrayNode evidence = one.putArray("evidence");
        reason.path("evidence").forEach(each -> evidence.add(toldEvidence(each)));
      }
      ArrayNode passed = told.putArray("passed");
      decision.path("passed").forEach(check -> passed.add(toldCheck(check)));
      ArrayNode needed = told.putArray("needed");
      StreamSupport.stream(decision.path("needed").spliterator(), false)
          .map(one -> one.path("point").asText() + ": " + one.path("why").asText())
          .sorted()
          .forEach(needed::add);
      return told;
    }

    private static ObjectNode toldEvidence(JsonNode evidence) {
      return evidence.path("kind").asText().equals("measured")
          ? toldCheck(evidence).put("kind", "measured")
          : (ObjectNode) evidence;
    }

    private static ObjectNode toldCheck(JsonNode check) {
      ObjectNode told = JsonNodeFactory.instance.objectNode();
      for (String name : List.of("part", "property", "status")) {
        told.set(name, check.path(name));
      }
      told.set("reading", check.path("reading").path("value"));
      told.set("margin", check.path("margin"));
      told.set("limit", check.path("limit"));
      return told;
    }
  }
}
