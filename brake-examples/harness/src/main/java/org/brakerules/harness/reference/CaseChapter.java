package org.brakerules.harness.reference;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.brakerules.Rule;
import org.brakerules.harness.cases.RuleCase;

/** The cases of a component, each with the way back to its rules, their limits and clauses. */
final class CaseChapter {

  private static final Links LINKS = Links.FROM_A_COMPONENT;

  private final Material material;

  CaseChapter(Material material) {
    this.material = material;
  }

  String of(List<RuleCase> cases) {
    return cases.isEmpty()
        ? ""
        : "\n## Cases\n" + cases.stream().map(this::one).collect(Collectors.joining());
  }

  private String one(RuleCase one) {
    RuleCase.Expected expected = one.expected();
    return "\n### "
        + one.name()
        + "\n\n"
        + rules("Speaks", expected.fires())
        + rules("Just silent", expected.near())
        + line("Expects", pairs(expected.dispositions()))
        + line("On hold", String.join(", ", expected.holds()))
        + line("Needs", String.join(", ", expected.needs()))
        + line("On the road", pairs(expected.road()))
        + line("Checked against", one.source());
  }

  private String rules(String how, List<String> ids) {
    return ids.stream()
        .flatMap(id -> material.rule(id).stream())
        .map(rule -> line(how, traced(rule)))
        .collect(Collectors.joining());
  }

  private String traced(Rule rule) {
    String limits =
        material.limitsReadBy(rule).stream()
            .map(limit -> LINKS.limit(limit.id()) + " by " + LINKS.clauseAlone(limit.source()))
            .distinct()
            .collect(Collectors.joining(", "));
    String clauses =
        rule.source().stream().map(LINKS::clauseAlone).collect(Collectors.joining(", "));
    return LINKS.rule(rule) + ", by " + clauses + (limits.isEmpty() ? "" : "; it reads " + limits);
  }

  private static String line(String title, String words) {
    return words.isEmpty() ? "" : "- " + title + ": " + words + "\n";
  }

  private static String pairs(Map<String, String> byPart) {
    return new TreeMap<>(byPart)
        .entrySet().stream()
            .map(one -> "`" + one.getKey() + "` " + one.getValue())
            .collect(Collectors.joining(", "));
  }
}
