package org.brakerules.harness.sheet;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.brakerules.harness.html.Markup;
import org.brakerules.harness.report.Wording;
import org.brakerules.model.decision.Caution;
import org.brakerules.model.part.Place;
import org.brakerules.work.FittedPart;
import org.brakerules.work.Recording;
import org.brakerules.work.WorkLevel;
import org.brakerules.work.WorkPhase;
import org.brakerules.work.WorkStep;

/** The work step by step, with room to write readings and to sign. */
final class StepsChapter {

  private final Markup page;
  private final List<WorkStep> steps;
  private final List<Caution> cautions;
  private final Set<String> told;

  /**
   * Lays the steps out.
   *
   * @param cautions all cautions of the work, in the order of their numbers on the page
   * @param told details that stand on the page already
   */
  StepsChapter(Markup page, List<WorkStep> steps, List<Caution> cautions, List<String> told) {
    this.page = page;
    this.steps = steps;
    this.cautions = cautions;
    this.told = new HashSet<>(told);
  }

  void write() {
    page.open("section", "class", "work").element("h2", "The work, in order");
    page.element(
        "p",
        "Numbers are those of the plan of the whole vehicle; gaps are steps at other wheel ends. At"
            + " a hold point nobody goes on until it passes. Cautions are called by their numbers in the list above. Sign on the line of each"
            + " step.",
        "class",
        "note");
    page.open("div", "class", "steps");
    for (WorkPhase phase : WorkPhase.values()) {
      List<WorkStep> own = steps.stream().filter(step -> step.phase() == phase).toList();
      if (!own.isEmpty()) {
        page.element("h3", capital(phase.inWords())).open("ol");
        own.forEach(this::step);
        page.close();
      }
    }
    page.closeTo("section");
  }

  private void step(WorkStep step) {
    page.open("li", "value", Integer.toString(step.number()), "class", step.hold() ? "hold" : "");
    page.element("span", "", "class", "sign");
    page.words(where(step) + step.ifFitted().map(one -> one + ": ").orElse("") + step.text());
    if (!step.parts().isEmpty()) {
      page.words(" ").element("span", fitted(step.parts()), "class", "fitted");
    }
    step.details().stream()
        .filter(told::add)
        .forEach(detail -> page.element("span", detail, "class", "detail"));
    if (step.hold()) {
      page.element("span", "Hold point. Passes when " + step.passesWhen() + ".", "class", "passes");
    }
    cautions(step);
    records(step.records());
    page.close();
  }

  /** On paper a step calls its cautions by number and name; the list on the page has the words. */
  private void cautions(WorkStep step) {
    if (step.cautions().isEmpty()) {
      return;
    }
    page.words(" ").open("span", "class", "caution");
    boolean first = true;
    for (Caution caution : step.cautions()) {
      page.words(first ? "Caution " : "; ");
      page.words((cautions.indexOf(caution) + 1) + " " + name(caution));
      page.element("span", ": " + caution.text(), "class", "full");
      first = false;
    }
    page.close();
  }

  private static String name(Caution caution) {
    return caution.id().replace('-', ' ');
  }

  private static String where(WorkStep step) {
    return step.level() == WorkLevel.WHEEL_END
        ? ""
        : "Whole " + step.level().name().toLowerCase(Locale.ROOT) + ": ";
  }

  /** What goes in, such as {@code New: roller clip, upper and lower. Goes back: shoe, upper.} */
  private static String fitted(List<FittedPart> parts) {
    return parts.stream()
        .collect(Collectors.groupingBy(FittedPart::use, TreeMap::new, Collectors.toList()))
        .entrySet()
        .stream()
        .map(one -> capital(one.getKey().inWords()) + ": " + byKind(one.getValue()) + ".")
        .collect(Collectors.joining(" "));
  }

  private static String byKind(List<FittedPart> parts) {
    return parts.stream()
        .map(FittedPart::part)
        .collect(Collectors.groupingBy(Place::kind, TreeMap::new, Collectors.toList()))
        .values()
        .stream()
        .map(Wording::parts)
        .collect(Collectors.joining("; "));
  }

  private void records(List<Recording> records) {
    if (records.isEmpty()) {
      return;
    }
    page.words(" ").open("span", "class", "record");
    boolean first = true;
    for (Recording record : records) {
      page.words(first ? "Write down: " : "; ");
      record(record);
      first = false;
    }
    page.close();
  }

  private void record(Recording record) {
    page.words(record.what());
    for (int i = 0; i < record.readings(); i++) {
      page.words(" ").element("span", "", "class", "blank");
    }
    String limits = record.limitsInWords();
    if (!limits.isEmpty()) {
      page.words(" (" + limits + ")");
    }
    if (record.makersFigure()) {
      page.words(" maker's figure ").element("span", "", "class", "blank");
    }
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
