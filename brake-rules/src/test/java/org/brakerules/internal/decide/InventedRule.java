package org.brakerules.internal.decide;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.brakerules.internal.engine.ReadRule;
import org.brakerules.internal.engine.RuleText;
import org.brakerules.internal.engine.Sentence;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.part.PartKind;

/** A rule that says nothing but its verdict of a kind of part. */
final class InventedRule {

  private InventedRule() {}

  /** A rule that reads something of other parts. */
  static RuleText of(PartKind subject, Verdict verdict, String... reads) {
    return new ReadRule(
        "INVENTED-010",
        "Invented",
        new Sentence("Invented."),
        new Sentence("Do it."),
        List.of(),
        Set.of(),
        subject,
        verdict,
        Arrays.asList(reads),
        Arrays.asList(reads),
        Set.of(),
        "",
        Map.of());
  }
}
