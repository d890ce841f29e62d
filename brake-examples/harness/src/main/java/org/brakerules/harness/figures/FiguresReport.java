package org.brakerules.harness.figures;

import java.util.List;
import org.brakerules.calc.Working;
import org.brakerules.figure.Figure;
import org.brakerules.figure.JobFigures;
import org.brakerules.figure.WheelEndFigures;
import org.brakerules.harness.report.Page;
import org.brakerules.harness.report.Palette;

/** The figures of a job as worked examples for people to follow. */
public final class FiguresReport {

  private static final int INDENT = 4;
  private static final int LABEL = 9;

  private final Page page = new Page(new Palette(false));

  private FiguresReport() {}

  /** The report of one job. */
  public static String of(JobFigures figures) {
    FiguresReport report = new FiguresReport();
    report.write(figures);
    return report.page.toString();
  }

  private void write(JobFigures figures) {
    String reference = figures.reference().isEmpty() ? "" : " " + figures.reference();
    page.paragraph(0, "Figures of brake job" + reference);
    page.labelled(2, "Inspected", 12, figures.date().toString());
    page.labelled(2, "Rule set", 12, figures.ruleSet().id());
    page.labelled(
        2, "Note", 12, "An estimate compares brakes; it is no reading and meets no limit.");
    for (WheelEndFigures end : figures.wheelEnds()) {
      chapter(end.wheelEnd().toString(), end.figures());
    }
    if (!figures.vehicle().isEmpty()) {
      chapter("Over several wheel ends", figures.vehicle());
    }
  }

  private void chapter(String heading, List<Figure> figures) {
    page.gap();
    page.paragraph(0, heading);
    page.paragraph(0, "=".repeat(heading.length()));
    if (figures.isEmpty()) {
      page.paragraph(2, "No reading was taken that anything could be worked out from.");
    }
    figures.forEach(this::figure);
  }

  private void figure(Figure figure) {
    Working working = figure.working();
    String about = figure.about().isEmpty() ? "" : " - " + figure.about();
    page.gap();
    page.paragraph(2, working.title() + about);
    working.given().forEach(one -> line("given", one.name() + " " + one.value()));
    working.assumed().forEach(one -> line("assumed", one.name() + " " + one.value()));
    line("formula", working.formula());
    working.steps().forEach(step -> line("work", step));
    working.results().forEach(one -> line("result", one.name() + " " + one.value()));
    working.missing().forEach(what -> line("missing", what));
    line("basis", working.basis().inWords());
  }

  private void line(String label, String words) {
    page.labelled(INDENT, label, LABEL, words);
  }
}
