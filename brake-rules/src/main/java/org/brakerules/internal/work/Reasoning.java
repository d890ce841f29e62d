package org.brakerules.internal.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.brakerules.calc.Working;
import org.brakerules.internal.work.PartCondition.Wanted;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.part.Scope;
import org.brakerules.work.Because;

/** Says what puts a step into a plan. */
final class Reasoning {

  private static final String SHIMS = "end-play.shims";

  private Reasoning() {}

  static Because of(String words) {
    return new Because(Optional.empty(), words, List.of());
  }

  /** By how far the work goes, and by the figures. */
  static List<Because> byWork(StepRow row, Match match) {
    List<Because> because = new ArrayList<>();
    for (Trigger trigger : row.triggers()) {
      trigger
          .scope()
          .filter(match.end().depth()::reaches)
          .map(scope -> byScope(scope, match.end()))
          .ifPresent(because::add);
    }
    if (row.isTriggeredBy(Trigger.Kind.SHIMS) && asksForShims(match.end())) {
      because.add(of("figure " + SHIMS));
    }
    return because;
  }

  private static Because byScope(Scope scope, EndFacts end) {
    return of(
        end.scope().reaches(scope)
            ? always(scope)
            : "the work goes as far as " + inWords(end.depth()));
  }

  private static String always(Scope scope) {
    return switch (scope) {
      case WHEEL_ON -> "always";
      case DRUM_OFF -> "always, when the drum is off";
      case SHOES_OFF -> "always, when the shoes are off";
      case CAMSHAFT_OUT -> "always, when the camshaft is out";
    };
  }

  static String inWords(Scope scope) {
    return scope.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** Whether the figures say that shims are changed. */
  static boolean asksForShims(EndFacts end) {
    return end.figures().stream()
        .anyMatch(
            figure ->
                figure.working().id().equals(SHIMS)
                    && figure.working().results().stream().anyMatch(Reasoning::isChange));
  }

  private static boolean isChange(Working.Named result) {
    return List.of("take out", "put in").contains(result.name()) && !result.value().equals("none");
  }

  /** By the decisions on parts. */
  static List<Because> byParts(StepRow row, Match match) {
    List<Because> because = new ArrayList<>();
    for (Decision decision : match.parts()) {
      if (row.fits().contains(decision.part().kind())
          && decision.disposition() == Disposition.REPLACE) {
        because.add(of(decision, Wanted.REPLACE));
      }
      for (PartCondition condition : row.forParts()) {
        if (condition.isMetBy(decision, match.end())) {
          because.add(of(decision, condition.wanted()));
        }
      }
    }
    return because.stream().distinct().toList();
  }

  private static Because of(Decision decision, Wanted wanted) {
    return new Because(Optional.of(decision.part()), wanted.inWords(), rules(decision));
  }

  /** The rules that led to what was decided, each once. */
  static List<String> rules(Decision decision) {
    return decision.reasons().stream()
        .filter(reason -> reason.verdict().disposition() == decision.disposition())
        .map(Reason::rule)
        .distinct()
        .toList();
  }

  /** By how the brake is built, where a wheel end is certainly built so. */
  static Optional<Because> byLayout(StepRow row, List<Match> matches) {
    return row.appliesTo().isEmpty() || matches.stream().noneMatch(Match::certain)
        ? Optional.empty()
        : Optional.of(of("the brake is built so: " + row.appliesTo()));
  }
}
