package org.brakerules.finalcheck;

import org.brakerules.internal.json.AnswerJson;
import org.brakerules.model.decision.Source;

/** Writes a final check as JSON, on one line. */
public final class FinalCheckWriter {

  private final AnswerJson out;

  private FinalCheckWriter(AnswerJson out) {
    this.out = out;
  }

  /** The final check of a job. */
  public static String write(FinalCheck check) {
    return AnswerJson.document(out -> new FinalCheckWriter(out).all(check));
  }

  private void all(FinalCheck check) {
    out.header(check.ruleBase(), check.reference(), check.date(), check.ruleSet());
    out.flag("released", check.released());
    out.objects("places", check.places(), this::place);
  }

  private void place(PlaceResult place) {
    out.text("on", place.on());
    out.unlessEmpty("by", place.by());
    out.flag("released", place.released());
    out.texts("keptBackBy", place.keptBackBy());
    out.objects("checks", place.checks(), this::check);
  }

  private void check(CheckResult check) {
    out.text("id", check.id());
    out.text("question", check.question());
    out.text("how", check.how());
    out.text("status", check.status());
    out.text("found", check.found());
    out.texts(
        "limits",
        check.limits().stream().map(limit -> limit.id() + " " + limit.inWords()).toList());
    out.text("consequence", check.consequence());
    out.text("remedy", check.remedy());
    out.flag("releases", check.releases());
    out.texts("source", check.source().stream().map(Source::citation).toList());
  }
}
