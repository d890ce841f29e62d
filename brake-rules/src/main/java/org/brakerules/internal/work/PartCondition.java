package org.brakerules.internal.work;

import java.util.Locale;
import java.util.Optional;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.part.PartKind;

/**
 * Something of a part that puts a step into a plan, such as {@code drum: adjust}.
 *
 * @param kind the kind of part; empty for any
 * @param wanted what of it
 * @param rule the rule that spoke of it; empty unless {@link Wanted#RULE}
 */
record PartCondition(Optional<PartKind> kind, Wanted wanted, String rule) {

  /** What of a part puts a step into a plan. */
  enum Wanted {
    REPLACE,
    ADJUST,
    CLEAN,
    UNDECIDED,
    /** The brake has it, whatever was decided. */
    FITTED,
    /** A named rule spoke of it, and it is not replaced. */
    RULE;

    /** What was decided, in a sentence. */
    String inWords() {
      return switch (this) {
        case REPLACE -> "is replaced";
        case ADJUST -> "is adjusted";
        case CLEAN -> "is cleaned";
        case UNDECIDED -> "is undecided";
        case FITTED -> "is fitted";
        case RULE -> "is put right";
      };
    }
  }

  boolean isMetBy(Decision decision) {
    return kind.map(one -> one == decision.part().kind()).orElse(true)
        && switch (wanted) {
          case FITTED -> true;
          case RULE ->
              decision.disposition() != Disposition.REPLACE
                  && decision.reasons().stream().anyMatch(reason -> reason.rule().equals(rule));
          default -> decision.disposition() == Disposition.valueOf(wanted.name());
        };
  }

  /** Whether there is something to do to the part at the step, and by which reasons. */
  boolean asksFor(Verdict verdict, String ruleOfReason) {
    return switch (wanted) {
      case ADJUST -> verdict == Verdict.ADJUST;
      case CLEAN -> verdict == Verdict.CLEAN;
      case RULE -> ruleOfReason.equals(rule);
      default -> false;
    };
  }

  static Optional<Wanted> wanted(String name) {
    for (Wanted one : Wanted.values()) {
      if (one != Wanted.RULE && one.name().toLowerCase(Locale.ROOT).equals(name)) {
        return Optional.of(one);
      }
    }
    return Optional.empty();
  }
}
