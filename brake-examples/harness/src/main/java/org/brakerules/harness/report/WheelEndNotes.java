package org.brakerules.harness.report;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import org.brakerules.harness.report.Palette.Ink;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.NextLook;
import org.brakerules.model.decision.RoadAnswer;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Place;
import org.brakerules.model.part.WheelEndPath;

/** The notes on one wheel end, what matters most first. */
final class WheelEndNotes {

  private static final String NOT_INSPECTED = "GENERAL-030";
  private static final String STILL_OPEN = "GENERAL-020";

  /** No layout asks for these, so that {@code needs} does not show their looks. */
  private static final Set<PartKind> LED_TO_BY_A_FINDING =
      EnumSet.of(PartKind.HUB, PartKind.WHEEL_SEAL, PartKind.WHEEL_BEARING);

  /** Parts of one kind of which the same is said are named together. */
  private record SameNotes(PartKind kind, String text) {}

  private final WheelEndPath wheelEnd;
  private final List<Decision> decisions;
  private final List<NextLook> next;
  private final RuleSet ruleSet;
  private final boolean workIsOnHold;
  private final Page page;

  WheelEndNotes(
      WheelEndPath wheelEnd,
      List<Decision> decisions,
      List<NextLook> next,
      RuleSet ruleSet,
      boolean workIsOnHold,
      Page page) {
    this.wheelEnd = wheelEnd;
    this.decisions = decisions;
    this.next = next;
    this.ruleSet = ruleSet;
    this.workIsOnHold = workIsOnHold;
    this.page = page;
  }

  void write() {
    page.underlined(wheelEnd.toString(), Ink.TITLE, '=');
    if (decisions.stream().anyMatch(Decision::hold)) {
      page.paragraph(
          2,
          "On hold: of all that follows only the looks that find the cause are made before the hold"
              + " is lifted. Nothing is set, fitted or closed, and looks that apply the brake are"
              + " left out.");
    } else if (workIsOnHold) {
      page.paragraph(
          2,
          "Another wheel end is on hold: no brake is applied, to measure it or to set it, and"
              + " looks that apply it are left out.");
    }
    for (Chapter chapter : Chapter.values()) {
      if (chapter == Chapter.CANNOT_BE_DECIDED) {
        looks();
      }
      chapter(chapter);
    }
  }

  /** What stops work on this wheel end; it stands before everything else of the whole job. */
  void writeHolds() {
    List<Decision> held = decisions.stream().filter(Decision::hold).toList();
    if (!held.isEmpty()) {
      page.underlined("HOLD - stop work on " + wheelEnd, Ink.STOP, '=');
      parts(held, Ink.STOP, (decision, notes) -> PartNotes.hold(decision, ruleSet, notes));
    }
  }

  /** A part nobody inspected is named as such; its looks are the business of {@code needs}. */
  private void looks() {
    List<Decision> shown =
        decisions.stream()
            .filter(one -> !isNotInspected(one) || LED_TO_BY_A_FINDING.contains(one.part().kind()))
            .toList();
    LooksInOrder looks = new LooksInOrder(next, shown);
    if (!looks.isEmpty()) {
      page.underlined("Look at and measure next, in this order", Ink.OPEN, '-');
      looks.write(page);
    }
  }

  private void chapter(Chapter chapter) {
    List<Decision> all =
        decisions.stream().filter(one -> one.disposition() == chapter.disposition()).toList();
    List<Decision> detailed =
        all.stream()
            .filter(one -> !isCondensed(one) && (!one.hold() || PartNotes.hasMoreThanHold(one)))
            .toList();
    if (detailed.isEmpty() && all.stream().noneMatch(WheelEndNotes::isCondensed)) {
      return;
    }
    page.underlined(chapter.title(), chapter.ink(), '-');
    if (chapter != Chapter.CANNOT_BE_DECIDED
        && detailed.stream().anyMatch(one -> says(one, chapter.commonRule()))) {
      page.paragraph(2, chapter.commonReason() + " (" + chapter.commonRule() + ").");
    }
    parts(
        detailed, Ink.TITLE, (decision, notes) -> PartNotes.all(decision, chapter, ruleSet, notes));
    condensed("Waiting for the looks and readings above", STILL_OPEN, all);
    condensed("Not inspected", NOT_INSPECTED, all);
  }

  private void parts(List<Decision> parts, Ink ink, BiConsumer<Decision, Page> writer) {
    Map<SameNotes, List<Place>> notes = new LinkedHashMap<>();
    for (Decision decision : parts) {
      Page one = page.another();
      writer.accept(decision, one);
      notes
          .computeIfAbsent(
              new SameNotes(decision.part().kind(), one.toString()), same -> new ArrayList<>())
          .add(decision.part());
    }
    notes.forEach(
        (same, places) -> {
          page.heading(2, Wording.parts(places), ink);
          page.append(same.text());
        });
  }

  private void condensed(String label, String rule, List<Decision> all) {
    List<Decision> parts = all.stream().filter(one -> saysOnly(one, rule)).toList();
    if (parts.isEmpty()) {
      return;
    }
    page.paragraph(2, label + " (" + rule + "): " + namesOf(parts) + ".");
    for (RoadAnswer answer : List.of(RoadAnswer.FAILED, RoadAnswer.OPEN, RoadAnswer.MET)) {
      List<Decision> same = parts.stream().filter(one -> one.road() == answer).toList();
      if (!same.isEmpty()) {
        page.paragraph(4, RoadInWords.of(answer, ruleSet) + " for " + namesOf(same) + ".");
      }
    }
  }

  private static String namesOf(List<Decision> parts) {
    return names(parts.stream().map(Decision::part).toList());
  }

  /** Parts by their kind, such as {@code camshaft; camshaft bushing, head end and spline end}. */
  static String names(List<Place> parts) {
    Map<PartKind, List<Place>> byKind =
        parts.stream()
            .collect(Collectors.groupingBy(Place::kind, LinkedHashMap::new, Collectors.toList()));
    return byKind.values().stream().map(Wording::parts).collect(Collectors.joining("; "));
  }

  static boolean isNotInspected(Decision decision) {
    return saysOnly(decision, NOT_INSPECTED);
  }

  private static boolean isCondensed(Decision decision) {
    return saysOnly(decision, NOT_INSPECTED) || saysOnly(decision, STILL_OPEN);
  }

  private static boolean saysOnly(Decision decision, String rule) {
    return decision.disposition() == Disposition.UNDECIDED
        && decision.reasons().size() == 1
        && says(decision, rule);
  }

  private static boolean says(Decision decision, String rule) {
    return decision.reasons().stream().anyMatch(reason -> reason.rule().equals(rule));
  }
}
