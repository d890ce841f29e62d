package org.brakerules.linter.internal.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.Metadata;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.Vocabulary;
import org.brakerules.linter.internal.text.Token;

/** A name in braces is filled from the facts the rule speaks of. */
final class SentenceNameCheck implements RuleCheck {

  private static final Pattern BRACES = Pattern.compile("\\{([^{}]*)}|[{}]");
  private static final String ALWAYS = "";

  /** Which fact a name needs. */
  private static final Map<String, String> NAMES =
      new TreeMap<>(
          Map.of(
              "part", ALWAYS,
              "wheelEnd", ALWAYS,
              "measured", Vocabulary.BEYOND_LIMIT,
              "limit", Vocabulary.BEYOND_LIMIT,
              "beyondBy", Vocabulary.BEYOND_LIMIT,
              "station", Vocabulary.BEYOND_LIMIT,
              "replaced", Vocabulary.REPLACED,
              "disturbed", Vocabulary.DISTURBED,
              "reading", Vocabulary.READINGS_CONTRADICT,
              "otherReading", Vocabulary.READINGS_CONTRADICT));

  @Override
  public void check(AuthoredRule rule, RuleBase base, Findings findings) {
    if (rule.conditions().isEmpty()) {
      return;
    }
    for (String key : List.of("because", "action")) {
      rule.metadata(key).stream()
          .map(Metadata::text)
          .forEach(text -> text.ifPresent(sentence -> check(rule, sentence, findings)));
    }
  }

  private static void check(AuthoredRule rule, Token sentence, Findings findings) {
    Matcher braces = BRACES.matcher(sentence.value());
    while (braces.find()) {
      String name = braces.group(1);
      int offset = sentence.valueOffset() + braces.start();
      if (name == null) {
        add(rule, offset, "a brace has no partner", "write a name in braces: {part}", findings);
      } else {
        check(rule, name, offset, findings);
      }
    }
  }

  private static void check(AuthoredRule rule, String name, int offset, Findings findings) {
    String needs = NAMES.get(name);
    if (needs == null) {
      add(
          rule,
          offset,
          "{" + name + "} is no name that can be filled",
          Remedy.known("{" + name + "}", allowed(rule), ""),
          findings);
    } else if (!needs.equals(ALWAYS) && !rule.speaksOf(needs)) {
      add(
          rule,
          offset,
          "{" + name + "} needs a " + needs + " pattern, and the rule has none",
          "add the pattern, or " + Remedy.oneOf(allowed(rule)),
          findings);
    }
  }

  private static List<String> allowed(AuthoredRule rule) {
    List<String> allowed = new ArrayList<>();
    NAMES.forEach(
        (name, needs) -> {
          if (needs.equals(ALWAYS) || rule.speaksOf(needs)) {
            allowed.add("{" + name + "}");
          }
        });
    return allowed;
  }

  private static void add(
      AuthoredRule rule, int offset, String message, String remedy, Findings findings) {
    findings.add(LintKind.UNKNOWN_NAME_IN_SENTENCE, rule, offset, message, remedy);
  }
}
