package org.brakerules.harness.work;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.brakerules.harness.report.Page;
import org.brakerules.harness.report.Palette;
import org.brakerules.work.Because;
import org.brakerules.work.FittedPart;
import org.brakerules.work.FittedPart.Use;
import org.brakerules.work.Recording;
import org.brakerules.work.Stop;
import org.brakerules.work.Surface;
import org.brakerules.work.ToState;
import org.brakerules.work.WorkLevel;
import org.brakerules.work.WorkPhase;
import org.brakerules.work.WorkPlan;
import org.brakerules.work.WorkStep;

/** The order of work of a job as a list to tick off. */
public final class PlanReport {

  private static final String BLANK = "______";
  private static final int INDENT = 6;
  private static final int LABEL = 11;
  private static final int REASONS_SHOWN = 2;

  private final Page page = new Page(new Palette(false));

  private PlanReport() {}

  /** The report of one plan. */
  public static String of(WorkPlan plan) {
    PlanReport report = new PlanReport();
    report.head(plan);
    report.steps(plan.steps());
    return report.page.toString();
  }

  private void head(WorkPlan plan) {
    String reference = plan.reference().isEmpty() ? "" : " " + plan.reference();
    page.paragraph(0, "Order of work of brake job" + reference);
    page.labelled(2, "Inspected", 12, plan.date().toString());
    page.labelled(2, "Rule set", 12, plan.ruleSet().id());
    page.labelled(2, "Scope", 12, words(plan.scope()));
    page.labelled(
        2,
        "Note",
        12,
        "The steps begin at the vehicle's arrival; tick off what is done already."
            + " HOLD means: nobody goes on until it passes.");
    if (!plan.stops().isEmpty()) {
      heading("The plan stops");
      plan.stops().forEach(this::stop);
      page.paragraph(
          2,
          "While a wheel end stops, no brake of the vehicle is set and none is proved; while one is"
              + " on hold, no air comes to any of them.");
    }
    if (!plan.otherEnds().isEmpty()) {
      heading("Other ends that the work reaches");
      plan.otherEnds().forEach(end -> page.labelled(2, "-", 2, end.inWords()));
    }
    if (!plan.toState().isEmpty()) {
      heading("State first, for steps hang on it");
      plan.toState().forEach(this::toState);
    }
    heading("Cautions");
    plan.cautions().forEach(caution -> page.labelled(2, "-", 2, caution.text()));
  }

  private void stop(Stop stop) {
    page.labelled(
        2, "-", 2, stop.wheelEnd() + " at step " + stop.step() + "; nothing beyond it is offered:");
    stop.why().forEach(why -> page.labelled(4, "-", 2, why));
    page.paragraph(4, "How it goes on:");
    stop.wayOut().forEach(way -> page.labelled(4, "-", 2, way));
  }

  private void toState(ToState fact) {
    String steps = fact.steps().stream().map(String::valueOf).collect(Collectors.joining(", "));
    page.labelled(
        2,
        "-",
        2,
        fact.wheelEnd()
            + ": "
            + fact.fact()
            + (fact.steps().isEmpty() ? "" : " (step " + steps + ")"));
  }

  private void steps(List<WorkStep> steps) {
    for (WorkPhase phase : WorkPhase.values()) {
      List<WorkStep> ofPhase = steps.stream().filter(step -> step.phase() == phase).toList();
      if (!ofPhase.isEmpty()) {
        String words = phase.inWords();
        heading(words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1));
        ofPhase.forEach(this::step);
      }
    }
  }

  private void heading(String words) {
    page.gap();
    page.paragraph(0, words);
    page.paragraph(0, "=".repeat(words.length()));
  }

  private void step(WorkStep step) {
    page.gap();
    String on = step.level() == WorkLevel.VEHICLE ? "vehicle" : step.on();
    page.labelled(0, "%4d".formatted(step.number()), INDENT, "[ ] " + step.id() + ", " + on);
    step.ifFitted().ifPresent(words -> line("only", words));
    page.paragraph(INDENT, step.text());
    step.details().forEach(detail -> line("here", detail));
    for (Use use : Use.values()) {
      parts(step, use);
    }
    if (!step.greases().isEmpty()) {
      line("grease", surfaces(step.greases()));
    }
    if (!step.keepsDry().isEmpty()) {
      line("keep dry", surfaces(step.keepsDry()));
    }
    step.cautions().forEach(caution -> line("caution", caution.text()));
    step.records().forEach(recording -> line("write down", words(recording)));
    if (step.hold()) {
      line("HOLD", step.passesWhen().isEmpty() ? "until this is settled" : step.passesWhen());
    }
    line("because", because(step));
  }

  private void parts(WorkStep step, Use use) {
    String parts =
        step.parts().stream()
            .filter(part -> part.use() == use)
            .map(part -> words(step, part))
            .collect(Collectors.joining("; "));
    if (!parts.isEmpty()) {
      page.labelled(INDENT, use.inWords() + ":", label(use), parts);
    }
  }

  /** A long label keeps a column of its own. */
  private static int label(Use use) {
    return Math.max(LABEL, use.inWords().length() + 2);
  }

  private static String words(WorkStep step, FittedPart part) {
    String name =
        step.level() == WorkLevel.WHEEL_END ? part.part().inWords() : part.part().toString();
    return part.use() == Use.NEW ? name + " (" + String.join(", ", part.rules()) + ")" : name;
  }

  private static String words(Recording recording) {
    String figure =
        recording.makersFigure() ? "by the maker's manual: " + BLANK : recording.limitsInWords();
    String blanks = String.join(" ", Collections.nCopies(recording.readings(), BLANK));
    return recording.what() + ": " + blanks + (figure.isEmpty() ? "" : " (" + figure + ")");
  }

  private static String because(WorkStep step) {
    List<Because> because = step.because();
    String shown =
        because.stream()
            .limit(REASONS_SHOWN)
            .map(one -> words(step, one))
            .collect(Collectors.joining("; "));
    int more = because.size() - REASONS_SHOWN;
    return more > 0 ? shown + "; and " + more + " more" : shown;
  }

  private static String words(WorkStep step, Because because) {
    String part =
        because
            .part()
            .map(place -> step.level() == WorkLevel.WHEEL_END ? place.inWords() : place.toString())
            .map(name -> name + " ")
            .orElse("");
    String rules = because.rules().isEmpty() ? "" : " (" + String.join(", ", because.rules()) + ")";
    return part + because.words() + rules;
  }

  private static String surfaces(List<Surface> surfaces) {
    return surfaces.stream().map(Surface::inWords).collect(Collectors.joining(", "));
  }

  private void line(String label, String words) {
    page.labelled(INDENT, label, LABEL, words);
  }

  private static String words(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
