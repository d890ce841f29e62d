package org.brakerules.internal.work;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.PartKind;

/**
 * Something of a part that puts a step into a plan, such as {@code drum: adjust}.
 *
 * @param kind the kind of part; empty for any
 * @param wanted what of it
 * @param rule the rule that spoke of it; empty unless {@link Wanted#RULE} or {@link
 *     Wanted#REPLACED_BY}
 */
record PartCondition(Optional<PartKind> kind, Wanted wanted, String rule) {

  /** What of a part puts a step into a plan. */
  enum Wanted {
    REPLACE,
    ADJUST,
    CLEAN,
    UNDECIDED,
    /** It is new and fitted already. */
    NEW,
    /** The brake has it, whatever was decided. */
    FITTED,
    /** A named rule spoke of it, and it is not replaced. */
    RULE,
    /** A named rule had it replaced. */
    REPLACED_BY;

    /** What was decided, in a sentence. */
    String inWords() {
      return switch (this) {
        case REPLACE, REPLACED_BY -> "is replaced";
        case ADJUST -> "is adjusted";
        case CLEAN -> "is cleaned";
        case UNDECIDED -> "is undecided";
        case NEW -> "is new";
        case FITTED -> "is fitted";
        case RULE -> "is put right";
      };
    }
  }

  private static final Set<Wanted> NEEDS_RULE = EnumSet.of(Wanted.RULE, Wanted.REPLACED_BY);

  boolean isMetBy(Decision decision, EndFacts end) {
    return kind.map(one -> one == decision.part().kind()).orElse(true)
        && switch (wanted) {
          case FITTED -> true;
          case NEW ->
              decision.disposition() != Disposition.REPLACE
                  && end.inspected(decision.part()).part().condition() == Condition.NEW;
          case RULE -> decision.disposition() != Disposition.REPLACE && isByRule(decision);
          case REPLACED_BY -> decision.disposition() == Disposition.REPLACE && isByRule(decision);
          default -> decision.disposition() == Disposition.valueOf(wanted.name());
        };
  }

  private boolean isByRule(Decision decision) {
    return decision.reasons().stream().anyMatch(reason -> reason.rule().equals(rule));
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
      if (!NEEDS_RULE.contains(one) && one.name().toLowerCase(Locale.ROOT).equals(name)) {
        return Optional.of(one);
      }
    }
    return Optional.empty();
  }
}
