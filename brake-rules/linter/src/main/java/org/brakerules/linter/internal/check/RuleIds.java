package org.brakerules.linter.internal.check;

import java.util.Collections;
import java.util.HashSet;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.brakerules.linter.internal.base.AuthoredRule;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.base.RuleFile;

/** The ids in one rule file: the folder in capital letters, and a number in steps of ten. */
final class RuleIds {

  static final int STEP = 10;

  private static final Pattern ID = Pattern.compile("(.*)-(\\d{3})");

  private final String folder;
  private final Set<Integer> taken = new HashSet<>(Set.of(0));

  RuleIds(RuleFile file) {
    this.folder = file.folder().toUpperCase(Locale.ROOT);
    file.rules().forEach(rule -> number(rule).ifPresent(taken::add));
  }

  /** The ids in the file of a rule. */
  static RuleIds around(AuthoredRule rule, RuleBase base) {
    return base.ruleFiles()
        .filter(file -> file.folder().equals(rule.folder()))
        .map(RuleIds::new)
        .findFirst()
        .orElseThrow();
  }

  /** The folder as ids write it. */
  String folder() {
    return folder;
  }

  /** The number of a rule; empty if its id is no id of this file. */
  OptionalInt number(AuthoredRule rule) {
    Matcher id = ID.matcher(rule.id());
    return id.matches() && id.group(1).equals(folder)
        ? OptionalInt.of(Integer.parseInt(id.group(2)))
        : OptionalInt.empty();
  }

  String id(int number) {
    return "%s-%03d".formatted(folder, number);
  }

  /** The next free id behind all others; each is given once. */
  String next() {
    return give(stepAfter(Collections.max(taken)));
  }

  /**
   * What to write for the id of a rule: a step next to a number that keeps the rule in its place,
   * or else the next free id.
   *
   * @param number the number as written
   * @param before the number of the rule before
   * @param form what is written, with {@code %s} for the id
   */
  String toWriteFor(int number, int before, String form) {
    return IntStream.of(stepAfter(number), stepAfter(number) - STEP)
        .filter(step -> step > before && !taken.contains(step))
        .mapToObj(step -> "write " + form.formatted(give(step)))
        .findFirst()
        .orElseGet(
            () -> "write " + form.formatted(next()) + " and put the rule at the end of the file");
  }

  private String give(int number) {
    taken.add(number);
    return id(number);
  }

  private static int stepAfter(int number) {
    return (number / STEP + 1) * STEP;
  }
}
