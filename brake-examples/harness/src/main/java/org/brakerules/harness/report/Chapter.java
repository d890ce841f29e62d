package org.brakerules.harness.report;

import org.brakerules.harness.report.Palette.Ink;
import org.brakerules.model.decision.Disposition;

/** The chapters of a wheel end's notes after what is on hold, in the order they are read. */
enum Chapter {
  REPLACE("Replace", Disposition.REPLACE, "", "", Ink.REPLACE),
  CANNOT_BE_DECIDED(
      "Cannot be decided yet",
      Disposition.UNDECIDED,
      "GENERAL-020",
      "Waits for what is listed under the looks and readings above",
      Ink.OPEN),
  ADJUST("Adjust", Disposition.ADJUST, "", "", Ink.OPEN),
  CLEAN("Clean and put back", Disposition.CLEAN, "", "", Ink.GOOD),
  GOES_BACK(
      "Goes back",
      Disposition.REUSE,
      "GENERAL-010",
      "Everything the decision needs at this scope was looked at, and nothing speaks against the part",
      Ink.GOOD);

  private final String title;
  private final Disposition disposition;
  private final String commonRule;
  private final String commonReason;
  private final Ink ink;

  Chapter(String title, Disposition disposition, String commonRule, String commonReason, Ink ink) {
    this.title = title;
    this.disposition = disposition;
    this.commonRule = commonRule;
    this.commonReason = commonReason;
    this.ink = ink;
  }

  String title() {
    return title;
  }

  Disposition disposition() {
    return disposition;
  }

  /** The rule that speaks of most parts of the chapter; it is named once. Empty if none does. */
  String commonRule() {
    return commonRule;
  }

  /** What the common rule says. */
  String commonReason() {
    return commonReason;
  }

  Ink ink() {
    return ink;
  }
}
