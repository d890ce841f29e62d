package org.brakerules.harness.batch;

import java.util.List;
import org.brakerules.model.decision.Verdict;

/**
 * The rules that hold for every part. They stand in no rule file, so the key of the compact form
 * tells them from here; a test holds them against the rule base.
 */
final class GeneralRules {

  /**
   * One of them.
   *
   * @param id its id
   * @param title its title
   * @param verdict what it says of a part
   * @param action what to do; empty if there is nothing to do
   */
  record GeneralRule(String id, String title, Verdict verdict, String action) {}

  /** The only one that lets a part go back. */
  static final String GOES_BACK = "GENERAL-010";

  /** Where all of them come from. */
  static final String SOURCE = "PRINCIPLES";

  static final String SOURCE_TITLE = "Principles of this rule base";

  static final List<GeneralRule> ALL =
      List.of(
          new GeneralRule(GOES_BACK, "Everything needed was looked at", Verdict.REUSE, ""),
          undecided(
              "GENERAL-020",
              "Something needed is not known yet",
              "Look at or measure what is listed as needed."),
          undecided(
              "GENERAL-030", "Part not inspected", "Inspect it, or state that it is not fitted."),
          undecided(
              "GENERAL-050", "Part missing", "Find out what the maker fits here, and fit it."),
          undecided(
              "GENERAL-060",
              "A finding no rule answers",
              "Do not put the part back on this answer; decide it by the maker's manual."),
          undecided(
              "GENERAL-070",
              "Part not laid open",
              "Open the brake further, or state the scope that was reached."));

  private GeneralRules() {}

  private static GeneralRule undecided(String id, String title, String action) {
    return new GeneralRule(id, title, Verdict.UNDECIDED, action);
  }
}
