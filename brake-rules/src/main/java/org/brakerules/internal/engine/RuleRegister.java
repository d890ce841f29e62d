package org.brakerules.internal.engine;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.brakerules.internal.table.Names;
import org.brakerules.internal.table.RuleBaseException;
import org.brakerules.internal.table.RuleBaseFiles;
import org.brakerules.internal.table.SourceTable;
import org.brakerules.model.decision.Source;
import org.brakerules.model.job.RuleSet;

/**
 * What the rules of this artifact say about themselves, a line for each. The build reads it from
 * the compiled rules and holds it against the tables; who decides a job needs little of it, and
 * should not wait for the rest.
 */
final class RuleRegister {

  /** Its name in the pack. */
  static final String FILE = "rules.tsv";

  private static final char CELL = '\t';
  private static final String ENTRY = ";";

  private RuleRegister() {}

  /** Writes the lines. */
  static String write(Collection<RuleText> rules) {
    return rules.stream().map(RuleRegister::line).collect(Collectors.joining());
  }

  private static String line(RuleText rule) {
    String line =
        String.join(
            String.valueOf(CELL),
            rule.id(),
            rule.title(),
            rule.subject().id(),
            Names.of(rule.verdict()),
            list(rule.laws().stream().map(RuleSet::id).sorted().toList()),
            list(rule.readsBeside()),
            rule.because().text(),
            rule.action().text(),
            list(rule.sources().stream().map(Source::citation).toList()),
            list(rule.reads()),
            list(rule.axleKinds().stream().map(Names::of).sorted().toList()),
            list(rule.conditions().entrySet().stream().map(RuleRegister::condition).toList()));
    if (line.indexOf('\n') >= 0 || line.chars().filter(one -> one == CELL).count() != 11) {
      throw new RuleBaseException("Rule " + rule.id() + " has a tab or a line end in a text.");
    }
    return line + "\n";
  }

  private static String condition(Map.Entry<Class<?>, ? extends Collection<String>> of) {
    return of.getKey().getName() + ":" + String.join(",", of.getValue());
  }

  private static String list(Collection<String> entries) {
    return String.join(ENTRY, entries);
  }

  /** The rules of the lines by the name the engine knows them by, in the order of the lines. */
  static Map<String, RuleText> read(String lines, SourceTable sources) {
    Supplier<Map<String, String>> files =
        new Lazy<>(() -> RuleFiles.texts(RuleBaseFiles.ofThisArtifact()));
    Map<String, RuleText> rules = new LinkedHashMap<>();
    int from = 0;
    while (from < lines.length()) {
      int end = lines.indexOf('\n', from);
      RegisteredRule rule = new RegisteredRule(lines.substring(from, end), sources, files);
      rules.put(rule.id() + " " + rule.title(), rule);
      from = end + 1;
    }
    return rules;
  }
}
