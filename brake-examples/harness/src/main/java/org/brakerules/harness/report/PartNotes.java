package org.brakerules.harness.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.brakerules.harness.report.Palette.Ink;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Evidence;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.decision.RoadAnswer;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.job.RuleSet;

/** The notes on one part: why, what to do, what to look at, what was found good. */
final class PartNotes {

  private static final int INDENT = 4;
  private static final int LABEL = 11;

  private final Decision decision;
  private final Page page;

  private PartNotes(Decision decision, Page page) {
    this.decision = decision;
    this.page = page;
  }

  /** Why work on a part stops, and what to do. */
  static void hold(Decision decision, RuleSet ruleSet, Page page) {
    PartNotes notes = new PartNotes(decision, page);
    notes.road(ruleSet);
    notes.reasons(notes.reasons(reason -> reason.verdict() == Verdict.HOLD));
  }

  /** Everything on a part that does not stop work and that its chapter does not say already. */
  static void all(Decision decision, Chapter chapter, RuleSet ruleSet, Page page) {
    PartNotes notes = new PartNotes(decision, page);
    if (!decision.hold()) {
      notes.road(ruleSet);
    }
    if (decision.disposition() == Disposition.REPLACE) {
      notes.replacement();
    } else {
      notes.reasons(notes.reasons(reason -> isOwn(reason, chapter)));
      notes.good();
    }
  }

  /** Whether there is something to say of a part beside its hold. */
  static boolean hasMoreThanHold(Decision decision) {
    return decision.reasons().stream().anyMatch(reason -> reason.verdict() != Verdict.HOLD);
  }

  private static boolean isOwn(Reason reason, Chapter chapter) {
    return reason.verdict() != Verdict.HOLD && !reason.rule().equals(chapter.commonRule());
  }

  private List<Reason> reasons(Predicate<Reason> which) {
    return decision.reasons().stream().filter(which).toList();
  }

  /**
   * What is found on the part is told in full. What its neighbours drag along is told in full only
   * if nothing else replaces it; what is milder than a replacement is noted.
   */
  private void replacement() {
    List<Reason> replaced = reasons(reason -> reason.verdict() == Verdict.REPLACE);
    List<Reason> found = replaced.stream().filter(reason -> !reason.isConsequence()).toList();
    List<Reason> inFull = found.isEmpty() ? replaced.subList(0, 1) : found;
    reasons(inFull);
    for (Reason reason : reasons(reason -> reason.verdict() != Verdict.HOLD)) {
      if (!inFull.contains(reason)) {
        line("Also", reason.sentence() + " [" + rule(reason) + "]");
      }
    }
  }

  private void road(RuleSet ruleSet) {
    if (decision.road() != RoadAnswer.SILENT) {
      Ink ink = decision.road() == RoadAnswer.FAILED ? Ink.STOP : Ink.PLAIN;
      page.heading(INDENT, RoadInWords.of(decision.road(), ruleSet) + ".", ink);
    }
  }

  private void reasons(List<Reason> reasons) {
    List<String> said = new ArrayList<>();
    for (Reason reason : reasons) {
      if (said.contains(reason.rule() + reason.sentence())) {
        continue; // the same finding on two parts, such as both linings
      }
      said.add(reason.rule() + reason.sentence());
      line("Why", reason.sentence());
      if (!reason.action().isEmpty() && !said.contains(reason.action())) {
        said.add(reason.action());
        line("Do", reason.action());
      }
      for (Evidence evidence : reason.evidence()) {
        if (evidence instanceof Evidence.Measured measured) {
          line("Reading", ReadingInWords.deciding(measured.check()));
        }
      }
      line("Rule", rule(reason));
    }
  }

  private static String rule(Reason reason) {
    return reason.rule() + ": " + Wording.sources(reason.source());
  }

  private void good() {
    decision.passed().forEach(check -> line("Measured", ReadingInWords.of(check)));
    decision.withoutLimit().stream()
        .map(ReadingInWords::of)
        .distinct()
        .forEach(words -> line("Measured", words));
    if (!decision.lookedAt().isEmpty()) {
      String looks =
          decision.lookedAt().stream().map(PartNotes::look).collect(Collectors.joining(", "));
      line("Looked at", "passed the looks for: " + looks);
    }
  }

  /** The point {@code camshaft.journal-worn} is about "journal worn". */
  private static String look(String point) {
    return point.substring(point.indexOf('.') + 1).replace('-', ' ');
  }

  private void line(String label, String words) {
    page.paragraph(INDENT, label, LABEL, Ink.QUIET, words);
  }
}
