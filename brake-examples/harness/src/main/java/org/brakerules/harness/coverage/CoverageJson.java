package org.brakerules.harness.coverage;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.BiConsumer;
import org.brakerules.harness.PrettyJson;
import org.brakerules.harness.coverage.ComponentCounts.Count;
import org.brakerules.trial.coverage.CaseName;
import org.brakerules.trial.coverage.ClauseCoverage;
import org.brakerules.trial.coverage.ConditionCoverage;
import org.brakerules.trial.coverage.Coverage;
import org.brakerules.trial.coverage.LimitCoverage;
import org.brakerules.trial.coverage.ListedItem;
import org.brakerules.trial.coverage.OpenItem;
import org.brakerules.trial.coverage.PointCoverage;
import org.brakerules.trial.coverage.RuleCoverage;
import org.brakerules.trial.coverage.SideCoverage;
import org.brakerules.trial.coverage.SourceCoverage;

/**
 * A coverage as JSON. Every field is there in every object. Cases that fire a rule or come near it
 * are all named; where many show something, their number is told with the first of them.
 */
public final class CoverageJson {

  private final CoverageReport report;

  private CoverageJson(CoverageReport report) {
    this.report = report;
  }

  /** The JSON of a report. */
  public static String of(CoverageReport report) {
    return PrettyJson.of(new CoverageJson(report).tree());
  }

  private ObjectNode tree() {
    Coverage coverage = report.coverage();
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.putObject("ruleBase")
        .put("version", coverage.version().version())
        .put("fingerprint", coverage.version().fingerprint());
    json.put("cases", coverage.cases());
    json.put("madeJobs", coverage.made());
    texts(json, "components", report.components());
    each(json, "open", coverage.open(), CoverageJson::open);
    each(json, "mayStayOpen", coverage.mayStayOpen(), CoverageJson::listed);
    each(json, "listedButNotOpen", report.notNeeded(), CoverageJson::listed);
    texts(json, "shownByMadeJobsAlone", coverage.shownByMadeAlone());
    each(json, "counts", report.countsAndTotal(), CoverageJson::counts);
    each(json, "rules", coverage.rules(), CoverageJson::rule);
    each(json, "limits", coverage.limits(), CoverageJson::limit);
    each(json, "points", coverage.points(), CoverageJson::point);
    each(json, "sources", coverage.sources(), CoverageJson::source);
    return json;
  }

  private static void open(OpenItem item, ObjectNode json) {
    json.put("what", item.what()).put("id", item.id());
    json.put("component", item.component()).put("words", item.words());
  }

  private static void listed(ListedItem item, ObjectNode json) {
    json.put("what", item.what()).put("id", item.id()).put("reason", item.reason());
  }

  private static void counts(ComponentCounts counts, ObjectNode json) {
    json.put("component", counts.name());
    count(json, "fired", counts.fired());
    count(json, "near", counts.near());
    count(json, "conditions", counts.conditions());
    count(json, "sides", counts.sides());
    count(json, "points", counts.points());
    json.put("open", counts.open());
  }

  private static void count(ObjectNode json, String field, Count count) {
    json.putObject(field).put("shown", count.shown()).put("of", count.all());
  }

  private static void rule(RuleCoverage rule, ObjectNode json) {
    json.put("id", rule.id()).put("component", rule.component()).put("title", rule.title());
    each(json, "fires", rule.fires(), CoverageJson::name);
    each(json, "near", rule.near(), CoverageJson::name);
    each(json, "saidNear", rule.saidNear(), CoverageJson::name);
    each(json, "conditions", rule.conditions(), CoverageJson::condition);
  }

  private static void condition(ConditionCoverage condition, ObjectNode json) {
    json.put("id", condition.id()).put("text", condition.text());
    cases(json, "holds", condition.holds());
    cases(json, "fails", condition.fails());
    cases(json, "failsBeside", condition.failsBeside());
  }

  private static void limit(LimitCoverage limit, ObjectNode json) {
    json.put("id", limit.id()).put("component", limit.component()).put("passes", limit.passes());
    cases(json, "applies", limit.applies());
    each(json, "sides", limit.sides(), CoverageJson::side);
  }

  private static void side(SideCoverage side, ObjectNode json) {
    json.put("side", side.side().word());
    cases(json, "cases", side.cases());
    json.put("madeJobs", side.made());
  }

  private static void point(PointCoverage point, ObjectNode json) {
    json.put("id", point.id()).put("component", point.component()).put("needed", point.needed());
    texts(json, "rules", point.rules());
    texts(json, "limits", point.limits());
    texts(json, "askedBy", point.askedBy());
  }

  private static void source(SourceCoverage source, ObjectNode json) {
    json.put("id", source.id()).put("title", source.title()).put("standing", source.standing());
    each(json, "clauses", source.clauses(), CoverageJson::clause);
  }

  private static void clause(ClauseCoverage clause, ObjectNode json) {
    json.put("clause", clause.clause());
    texts(json, "rules", clause.rules());
    texts(json, "limits", clause.limits());
    texts(json, "others", clause.others());
  }

  private static void cases(ObjectNode json, String field, List<CaseName> cases) {
    ObjectNode shown = json.putObject(field).put("count", cases.size());
    each(shown, "first", cases.stream().limit(1).toList(), CoverageJson::name);
  }

  private static void name(CaseName name, ObjectNode json) {
    json.put("component", name.component()).put("case", name.name());
  }

  private static void texts(ObjectNode json, String field, List<String> texts) {
    ArrayNode array = json.putArray(field);
    texts.forEach(array::add);
  }

  private static <T> void each(
      ObjectNode json, String field, List<T> things, BiConsumer<T, ObjectNode> write) {
    ArrayNode array = json.putArray(field);
    things.forEach(thing -> write.accept(thing, array.addObject()));
  }
}
