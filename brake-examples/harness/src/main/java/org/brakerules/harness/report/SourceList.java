package org.brakerules.harness.report;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.brakerules.harness.report.Palette.Ink;
import org.brakerules.model.decision.Check;
import org.brakerules.model.decision.Decision;
import org.brakerules.model.decision.Evidence;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.decision.Reason;
import org.brakerules.model.decision.Source;
import org.brakerules.model.decision.Standing;

/** The full titles of the sources a report names in short. */
final class SourceList {

  private SourceList() {}

  static void write(JobDecision decision, Page page) {
    Map<String, String> titles = new TreeMap<>();
    Stream.concat(
            decision.cautions().stream().flatMap(caution -> caution.source().stream()),
            decision.decisions().stream().flatMap(SourceList::of))
        .filter(Wording::isNamed)
        .filter(source -> source.standing() != Standing.MAKER)
        .forEach(source -> titles.put(source.id(), source.title()));
    if (!titles.isEmpty()) {
      page.underlined("Sources", Ink.TITLE, '=');
      titles.forEach((id, title) -> page.labelled(2, "-", 2, id + ": " + title));
    }
  }

  private static Stream<Source> of(Decision decision) {
    return Stream.of(
            decision.reasons().stream().flatMap(SourceList::of),
            limits(decision.passed()).map(LimitInForce::source),
            decision.needed().stream()
                .map(Needed::limits)
                .flatMap(List::stream)
                .map(LimitInForce::source))
        .flatMap(sources -> sources);
  }

  private static Stream<Source> of(Reason reason) {
    List<Check> measured =
        reason.evidence().stream()
            .filter(Evidence.Measured.class::isInstance)
            .map(evidence -> ((Evidence.Measured) evidence).check())
            .toList();
    return Stream.concat(reason.source().stream(), limits(measured).map(LimitInForce::source));
  }

  private static Stream<LimitInForce> limits(List<Check> checks) {
    return checks.stream().flatMap(check -> check.limit().stream());
  }
}
