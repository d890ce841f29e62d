package org.brakerules.trial.provision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.brakerules.internal.rule.WrittenPattern;
import org.brakerules.internal.rule.WrittenRule;
import org.brakerules.model.part.PartKind;
import org.brakerules.trial.provision.Provision.Kind;

/** A rule: its conditions, its verdict and its sources. Its title and sentences decide nothing. */
final class RuleProvision {

  private RuleProvision() {}

  static Provision of(WrittenRule rule) {
    List<String> lines = new ArrayList<>();
    rule.patterns().forEach(pattern -> lines.add("when " + text(pattern)));
    lines.add("then " + rule.action());
    Arrays.stream(rule.metadata().getOrDefault("source", "").split(";"))
        .forEach(source -> lines.add("source " + source.strip()));
    return new Provision(Kind.RULE, rule.id(), judgedPart(rule), lines);
  }

  private static String text(WrittenPattern pattern) {
    return pattern.variable().map(name -> name + " : ").orElse("") + pattern;
  }

  private static String judgedPart(WrittenRule rule) {
    return rule.patterns().stream()
        .filter(pattern -> pattern.variable().filter(rule.action().variable()::equals).isPresent())
        .flatMap(
            pattern ->
                Arrays.stream(PartKind.values())
                    .filter(kind -> kind.recordType().equals(pattern.type())))
        .map(PartKind::id)
        .findFirst()
        .orElseThrow();
  }
}
