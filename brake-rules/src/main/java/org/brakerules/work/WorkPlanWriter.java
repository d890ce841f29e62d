package org.brakerules.work;

import java.util.List;
import org.brakerules.internal.json.AnswerJson;
import org.brakerules.model.decision.Caution;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.decision.Source;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.parts.OtherEnd;

/** Writes the order of work as JSON, on one line. */
public final class WorkPlanWriter {

  private final AnswerJson out;

  private WorkPlanWriter(AnswerJson out) {
    this.out = out;
  }

  /** The order of work of a job. */
  public static String write(WorkPlan plan) {
    return AnswerJson.document(out -> new WorkPlanWriter(out).plan(plan));
  }

  private void plan(WorkPlan plan) {
    out.header(plan.ruleBase(), plan.reference(), plan.date(), plan.ruleSet());
    out.text("scope", plan.scope());
    out.objects("cautions", plan.cautions(), this::caution);
    out.objects("stops", plan.stops(), this::stop);
    out.objects("otherEnds", plan.otherEnds(), this::otherEnd);
    out.objects("toState", plan.toState(), this::toState);
    out.objects("steps", plan.steps(), this::step);
  }

  private void caution(Caution caution) {
    out.text("id", caution.id());
    out.text("text", caution.text());
    out.objects("source", caution.source(), this::source);
  }

  private void stop(Stop stop) {
    out.text("wheelEnd", stop.wheelEnd().toString());
    out.number("step", stop.step());
    out.texts("why", stop.why());
    out.texts("wayOut", stop.wayOut());
  }

  private void otherEnd(OtherEnd end) {
    out.text("wheelEnd", end.wheelEnd().toString());
    out.texts("renewed", end.renewed().stream().map(PartKind::id).toList());
    out.texts("compared", end.compared().stream().map(PartKind::id).toList());
    out.text("says", end.inWords());
  }

  private void toState(ToState fact) {
    out.text("wheelEnd", fact.wheelEnd().toString());
    out.text("fact", fact.fact());
    out.numbers("steps", fact.steps());
  }

  private void step(WorkStep step) {
    out.number("number", step.number());
    out.text("id", step.id());
    out.text("phase", step.phase());
    out.text("level", step.level());
    out.unlessEmpty("on", step.on());
    step.ifFitted().ifPresent(words -> out.text("ifFitted", words));
    out.text("text", step.text());
    out.flag("hold", step.hold());
    if (step.hold()) {
      out.text("passesWhen", step.passesWhen());
    }
    out.objects("parts", step.parts(), this::part);
    out.texts("undecided", step.undecided().stream().map(Place::toString).toList());
    out.texts("details", step.details());
    out.texts("greases", ids(step.greases()));
    out.texts("keepsDry", ids(step.keepsDry()));
    out.text("air", step.air());
    out.texts("cautions", step.cautions().stream().map(Caution::id).toList());
    out.objects("records", step.records(), this::record);
    out.numbers("after", step.after());
    out.objects("because", step.because(), this::because);
    out.objects("source", step.source(), this::source);
  }

  private void part(FittedPart part) {
    out.text("part", part.part().toString());
    out.text("use", part.use());
    out.texts("rules", part.rules());
  }

  private void record(Recording recording) {
    out.text("what", recording.what());
    out.number("readings", recording.readings());
    out.objects("limits", recording.limits(), this::limit);
    out.flag("makersFigure", recording.makersFigure());
  }

  private void limit(LimitToMeet toMeet) {
    LimitInForce limit = toMeet.limit();
    out.text("id", limit.id());
    out.text("comparison", limit.comparison().inWords());
    out.text("value", limit.written());
    toMeet.at().ifPresent(station -> out.text("at", station));
    out.texts("methods", ids(toMeet.methods()));
    toMeet.pressure().ifPresent(pressure -> out.text("pressure", pressure));
    out.unlessEmpty("otherwise", toMeet.otherwise());
    out.text("source", limit.source().citation());
  }

  private void because(Because because) {
    because.part().ifPresent(part -> out.text("part", part.toString()));
    out.text("words", because.words());
    out.texts("rules", because.rules());
  }

  private void source(Source source) {
    out.text("citation", source.citation());
    out.text("title", source.title());
    out.text("standing", source.standing());
  }

  private static List<String> ids(List<? extends Enum<?>> constants) {
    return constants.stream().map(AnswerJson::id).toList();
  }
}
