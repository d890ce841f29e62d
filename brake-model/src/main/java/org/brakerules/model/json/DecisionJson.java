package org.brakerules.model.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import org.brakerules.model.decision.Caution;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Evidence;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.decision.NextLook;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.decision.RuleBaseVersion;
import org.brakerules.model.decision.Source;
import org.brakerules.model.reading.Station;

/** Writes the fields of a decision, in their order. */
final class DecisionJson {

  private final JsonGenerator out;
  private final FieldWriter fields;

  DecisionJson(JsonGenerator out) {
    this.out = out;
    this.fields = new FieldWriter(out);
  }

  void decision(JobDecision decision) throws IOException {
    fields.object(decision, this::job);
  }

  private void job(JobDecision decision) throws IOException {
    fields.object("ruleBase", decision.ruleBase(), this::ruleBase);
    fields.textUnlessEmpty("reference", decision.reference());
    fields.text("date", decision.date());
    fields.text("ruleSet", decision.ruleSet());
    fields.choice("scope", decision.scope());
    out.writeBooleanField("complete", decision.complete());
    fields.texts("holds", decision.holds().stream().map(Decision::part).toList());
    fields.objects("decisions", decision.decisions(), this::part);
    fields.objects("next", decision.next(), this::next);
    fields.objects("cautions", decision.cautions(), this::caution);
  }

  private void ruleBase(RuleBaseVersion ruleBase) throws IOException {
    fields.text("version", ruleBase.version());
    fields.text("fingerprint", ruleBase.fingerprint());
  }

  private void part(Decision decision) throws IOException {
    fields.text("part", decision.part());
    fields.choice("disposition", decision.disposition());
    out.writeBooleanField("hold", decision.hold());
    fields.choice("road", decision.road());
    fields.objects("reasons", decision.reasons(), this::reason);
    fields.texts("actions", decision.actions());
    fields.objects("needed", decision.needed(), this::needed);
    fields.objects("passed", decision.passed(), this::check);
    fields.objects("withoutLimit", decision.withoutLimit(), this::check);
    fields.texts("lookedAt", decision.lookedAt());
  }

  private void reason(Reason reason) throws IOException {
    fields.text("rule", reason.rule());
    fields.text("title", reason.title());
    fields.choice("verdict", reason.verdict());
    fields.text("sentence", reason.sentence());
    fields.textUnlessEmpty("action", reason.action());
    fields.objects("evidence", reason.evidence(), this::evidence);
    fields.objects("source", reason.source(), this::source);
  }

  private void evidence(Evidence evidence) throws IOException {
    if (evidence instanceof Evidence.Stated stated) {
      fields.text("kind", "stated");
      fields.text("part", stated.part());
      fields.text("property", stated.property());
      fields.text("value", stated.value());
    } else if (evidence instanceof Evidence.Built built) {
      fields.text("kind", "built");
      fields.text("wheelEnd", built.wheelEnd());
      fields.text("property", built.property());
      fields.text("value", built.value());
    } else if (evidence instanceof Evidence.Measured measured) {
      fields.text("kind", "measured");
      check(measured.check());
    } else if (evidence instanceof Evidence.AlsoReplaced replaced) {
      fields.text("kind", "also-replaced");
      fields.text("wheelEnd", replaced.wheelEnd());
      fields.choice("partKind", replaced.kind());
    } else if (evidence instanceof Evidence.WasDisturbed disturbed) {
      fields.text("kind", "was-disturbed");
      fields.text("part", disturbed.part());
    } else if (evidence instanceof Evidence.UnlikePartner unlike) {
      fields.text("kind", "unlike-partner");
      fields.text("wheelEnd", unlike.wheelEnd());
      fields.choice("matter", unlike.matter());
    } else if (evidence instanceof Evidence.ReadingsContradict readings) {
      fields.text("kind", "readings-contradict");
      fields.text("part", readings.part());
      fields.choice("contradiction", readings.contradiction());
      fields.text("reading", readings.reading());
      fields.text("otherReading", readings.otherReading());
    } else {
      throw new AssertionError("Evidence of an unknown kind: " + evidence);
    }
  }

  private void check(Check check) throws IOException {
    fields.text("part", check.part());
    fields.text("property", check.property());
    fields.text("limitId", check.limitId());
    fields.choice("status", check.status());
    if (check.limit().isPresent()) {
      fields.object("limit", check.limit().get(), this::limit);
    }
    if (check.reading().isPresent()) {
      out.writeFieldName("reading");
      ReadingWriter.write(check.reading().get(), Station.UNKNOWN, out);
    }
    if (check.margin().isPresent()) {
      fields.text("margin", check.margin().get());
    }
  }

  private void limit(LimitInForce limit) throws IOException {
    fields.text("id", limit.id());
    fields.choice("comparison", limit.comparison());
    fields.text("value", limit.written());
    fields.object("source", limit.source(), this::source);
  }

  private void needed(Needed needed) throws IOException {
    fields.text("part", needed.part());
    fields.text("point", needed.point());
    fields.choice("task", needed.task());
    fields.text("what", needed.what());
    fields.text("why", needed.why());
    fields.textUnlessEmpty("instrument", needed.instrument());
    fields.textUnlessEmpty("how", needed.how());
    fields.choice("station", needed.station());
    fields.texts("methods", needed.methods().stream().map(Names::of).toList());
    fields.texts("conditions", needed.conditions());
    fields.objects("limits", needed.limits(), this::limit);
    fields.choice("from", needed.from());
  }

  private void next(NextLook next) throws IOException {
    fields.text("part", next.part());
    fields.text("point", next.point());
    fields.texts("bearsOn", next.bearsOn());
  }

  private void caution(Caution caution) throws IOException {
    fields.text("id", caution.id());
    fields.text("text", caution.text());
    fields.objects("source", caution.source(), this::source);
  }

  private void source(Source source) throws IOException {
    fields.text("id", source.id());
    fields.textUnlessEmpty("clause", source.clause());
    fields.text("title", source.title());
    fields.choice("standing", source.standing());
  }
}
