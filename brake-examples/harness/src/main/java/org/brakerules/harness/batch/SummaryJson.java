package org.brakerules.harness.batch;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.brakerules.harness.PrettyJson;
import org.brakerules.harness.batch.Summary.Frequent;
import org.brakerules.model.decision.RuleBaseVersion;

/** What a batch came to as JSON. The same input gives the same bytes. */
final class SummaryJson {

  private SummaryJson() {}

  static String of(Summary summary) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    RuleBaseVersion version = summary.rules().version();
    json.putObject("ruleBase")
        .put("version", version.version())
        .put("fingerprint", version.fingerprint());
    json.setAll(TallyJson.of(summary.tally()));
    json.put("partsTotal", summary.tally().parts().total());
    json.put("undecidedPercent", summary.undecidedPercent());
    ArrayNode frequent = json.putArray("mostFrequentReasons");
    summary.reasons().forEach(reason -> put(reason, frequent.addObject()));
    return PrettyJson.of(json);
  }

  private static void put(Frequent reason, ObjectNode json) {
    json.put("rule", reason.rule());
    if (!reason.title().isEmpty()) {
      json.put("title", reason.title());
    }
    json.put("parts", reason.parts());
  }
}
