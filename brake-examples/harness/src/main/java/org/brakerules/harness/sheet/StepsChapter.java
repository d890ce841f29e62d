package org.brakerules.harness.sheet;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.brakerules.harness.html.Markup;
import org.brakerules.harness.report.Wording;
import org.brakerules.model.decision.Caution;
import org.brakerules.model.part.Place;
import org.brakerules.work.FittedPart;
import org.brakerules.work.FittedPart.Use;
import org.brakerules.work.Recording;
import org.brakerules.work.Surface;
import org.brakerules.work.WorkLevel;
import org.brakerules.work.WorkPhase;
import org.brakerules.work.WorkStep;

/** The work step by step, with room to write readings and to sign. */
final class StepsChapter {

  private final Markup page;
  private final List<WorkStep> steps;
  private final List<Caution> cautions;
  private final Set<String> told;
  private final List<String> leaves;
  private final Set<Caution> spelledOut = new HashSet<>();

  /**
   * Lays the steps out.
   *
   * @param cautions all cautions of the work, in the order of their numbers on the page
   * @param told details that stand on the page already
   * @param leaves how the brake is left where the plan ends before its end; else empty
   */
  StepsChapter(
      Markup page,
      List<WorkStep> steps,
      List<Caution> cautions,
      List<String> told,
      List<String> leaves) {
    this.page = page;
    this.steps = steps;
    this.cautions = cautions;
    this.told = new HashSet<>(told);
    this.leaves = leaves;
  }

  void write() {
    page.open("section", "class", "work").element("h2", "The work, in order");
    page.element(
        "p",
        "The steps begin at the vehicle's arrival: tick off what is done already. Gaps"
            + " in the numbers are steps at other wheel ends. At a hold point nobody goes on until"
            + " it passes. Sign on the line of each step.",
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
    end();
    page.closeTo("section");
  }

  private void end() {
    if (!leaves.isEmpty()) {
      page.element("p", "Here the plan ends for now. " + String.join(" ", leaves), "class", "ends");
    }
  }

  private void step(WorkStep step) {
    page.open("li", "value", Integer.toString(step.number()), "class", step.hold() ? "hold" : "");
    page.words(where(step) + step.ifFitted().map(one -> one + ": ").orElse("") + step.text());
    line("fitted", fitted(step.parts(), use -> use != Use.GOES_BACK));
    line("fitted back", fitted(step.parts(), use -> use == Use.GOES_BACK));
    line("fitted", grease(step.greases()));
    step.details().stream()
        .filter(told::add)
        .forEach(detail -> page.element("span", detail, "class", "detail"));
    if (step.hold()) {
      page.open("span", "class", "passes").element("strong", "Hold point.");
      page.words(" Passes when " + step.passesWhen() + ".").close();
    }
    sign(!step.cautions().isEmpty());
    cautions(step);
    records(step.records());
    sign(step.cautions().isEmpty());
    page.close();
  }

  /**
   * On the line of the cautions or at the end, where nobody takes it for the blank of a reading.
   */
  private void sign(boolean here) {
    if (here) {
      page.words(" ").element("span", "", "class", "sign");
    }
  }

  private void line(String kind, String words) {
    if (!words.isEmpty()) {
      page.words(" ").element("span", words.strip(), "class", kind);
    }
  }

  /** What stays dry the text of a step says. */
  private static String grease(List<Surface> surfaces) {
    return surfaces.isEmpty()
        ? ""
        : surfaces.stream()
            .map(Surface::inWords)
            .collect(Collectors.joining(", ", "Grease: ", "."));
  }

  /**
   * On paper a step calls its cautions by their numbers; the list on the page has the words. On the
   * screen that list is far away, so there a call has the name, and the first of each the words.
   */
  private void cautions(WorkStep step) {
    if (step.cautions().isEmpty()) {
      return;
    }
    page.words(" ").open("span", "class", "caution");
    String before = step.cautions().size() > 1 ? "Cautions " : "Caution ";
    for (Caution caution : step.cautions()) {
      String name = " " + caution.id().replace('-', ' ');
      page.words(before + (cautions.indexOf(caution) + 1));
      page.element(
          "span", spelledOut.add(caution) ? name + ": " + caution.text() : name, "class", "full");
      before = ", ";
    }
    page.close();
  }

  private static String where(WorkStep step) {
    return step.level() == WorkLevel.WHEEL_END
        ? ""
        : capital(step.level().name().toLowerCase(Locale.ROOT)) + ": ";
  }

  /**
   * What goes in, such as {@code New: roller clip, upper and lower.} On paper only the list of
   * parts says what goes back.
   */
  private static String fitted(List<FittedPart> parts, Predicate<Use> wanted) {
    return parts.stream()
        .filter(part -> wanted.test(part.use()))
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
    page.words(" ").open("span", "class", "record").words("Write down: ");
    for (int i = 0; i < records.size(); i++) {
      boolean last = i == records.size() - 1;
      record(records.get(i), !last && limits(records.get(i)).equals(limits(records.get(i + 1))));
      page.words(last ? "" : "; ");
    }
    page.close();
  }

  private static String limits(Recording record) {
    return record.limitsInWords();
  }

  /** Of readings that meet the same limits the last says which. */
  private void record(Recording record, boolean nextSays) {
    page.words(record.what());
    for (int i = 0; i < record.readings(); i++) {
      page.words(" ").element("span", "", "class", record.readings() > 1 ? "blank few" : "blank");
    }
    String limits = limits(record);
    if (!limits.isEmpty() && !nextSays) {
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
