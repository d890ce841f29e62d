package org.brakerules.linter.internal.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Metadata;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.model.text.NearestName;

/** Every rule states its source, its finding and what to do, each once and nothing else. */
final class MetadataKeyCheck implements RuleCheck {

  private static final List<String> KEYS = List.of("source", "because", "action");

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    Set<String> seen = new HashSet<>();
    for (Metadata entry : rule.block().metadata()) {
      String key = entry.key().text();
      checkEntry(rule, entry, seen.add(key), findings);
      NearestName.of(key, KEYS).ifPresent(seen::add); // a misspelt key is not missing as well
    }
    for (String key : KEYS) {
      if (!seen.contains(key)) {
        findings.add(
            LintKind.MISSING_METADATA,
            rule,
            rule.block().nameOffset(),
            "the rule has no @" + key,
            "add " + example(key));
      }
    }
  }

  private static void checkEntry(
      AuthoredRule rule, Metadata entry, boolean first, Findings findings) {
    String key = entry.key().text();
    if (!KEYS.contains(key)) {
      findings.add(
          LintKind.UNKNOWN_METADATA,
          rule,
          entry.key(),
          "@" + key + " is not read by anyone",
          NearestName.of(key, KEYS).map(near -> "write @" + near).orElse("take it out"));
    } else if (!first) {
      findings.add(
          LintKind.REPEATED_METADATA,
          rule,
          entry.key(),
          "@" + key + " is there twice; the rule engine would keep the first without a word",
          "write it once" + (key.equals("source") ? "; put \"; \" between sources" : ""));
    }
  }

  static String example(String key) {
    return switch (key) {
      case "source" -> "@source(\"COMMON-PRACTICE\"), an id of sources.csv";
      case "because" -> "@because(\"...\"), what was found, in full sentences";
      default -> "@action(\"...\"), what to do, in full sentences";
    };
  }
}
