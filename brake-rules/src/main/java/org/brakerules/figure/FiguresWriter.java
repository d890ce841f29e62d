package org.brakerules.figure;

import org.brakerules.calc.Basis;
import org.brakerules.calc.Working;
import org.brakerules.internal.json.AnswerJson;

/** Writes figures as JSON, on one line. Every value is a text with its unit. */
public final class FiguresWriter {

  private final AnswerJson out;

  private FiguresWriter(AnswerJson out) {
    this.out = out;
  }

  /** The figures of a job. */
  public static String write(JobFigures figures) {
    return AnswerJson.document(out -> new FiguresWriter(out).job(figures));
  }

  private void job(JobFigures job) {
    out.header(job.ruleBase(), job.reference(), job.date(), job.ruleSet());
    out.objects("wheelEnds", job.wheelEnds(), this::wheelEnd);
    out.objects("vehicle", job.vehicle(), this::figure);
  }

  private void wheelEnd(WheelEndFigures end) {
    out.text("wheelEnd", end.wheelEnd().toString());
    out.objects("figures", end.figures(), this::figure);
  }

  private void figure(Figure figure) {
    Working working = figure.working();
    out.text("id", working.id());
    out.unlessEmpty("about", figure.about());
    out.text("title", working.title());
    out.objects("given", working.given(), this::named);
    out.objects("assumed", working.assumed(), this::named);
    out.text("formula", working.formula());
    out.texts("steps", working.steps());
    out.objects("results", working.results(), this::named);
    out.texts("missing", working.missing());
    out.object("basis", () -> basis(working.basis()));
  }

  private void basis(Basis basis) {
    out.text("source", basis.source());
    out.text("standing", basis.standing());
    out.text("kind", basis.kind());
  }

  private void named(Working.Named value) {
    out.text("name", value.name());
    out.text("value", value.value());
  }
}
