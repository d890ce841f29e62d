package org.brakerules.benchmark.speed;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.brakerules.internal.RuleBase;
import org.brakerules.internal.engine.RuleEngine;
import org.brakerules.internal.rule.WrittenComparison;
import org.brakerules.internal.rule.WrittenCondition;
import org.brakerules.internal.rule.WrittenPattern;
import org.brakerules.internal.rule.WrittenRule;
import org.brakerules.internal.rule.WrittenValue;
import org.brakerules.internal.table.Fingerprint;
import org.brakerules.internal.table.RuleBaseFiles;
import org.brakerules.internal.table.Tables;
import org.brakerules.linter.internal.base.RuleBaseReader;
import org.brakerules.model.part.Presence;
import org.brakerules.trial.RuleBaseFolder;
import org.brakerules.trial.internal.written.WrittenRules;

/**
 * The standard rules, and beside each of them copies under ids of their own.
 *
 * @param times how many times the rules there are
 * @param speaking whether the copies speak as the originals do. A copy that does not asks for one
 *     thing more of its part, which never holds: it stands for a rule about another brake.
 */
record ManyRules(int times, boolean speaking) {

  private static final Pattern ID =
      Pattern.compile("(?<=^rule \")[A-Z-]+-(?=\\d)", Pattern.MULTILINE);

  /** Puts the rule base together. */
  RuleBase ruleBase() {
    RuleBaseFiles files = this::open;
    Tables tables = Tables.load();
    return new RuleBase(
        tables, RuleEngine.ofWritten(rules(), tables, files), Fingerprint.ofRuleBase());
  }

  private List<WrittenRule> rules() {
    try (RuleBaseFolder folder = RuleBaseFolder.ofThisArtifact()) {
      List<WrittenRule> all = new ArrayList<>();
      for (WrittenRule rule :
          RuleBaseReader.read(folder.path()).rules().map(WrittenRules::of).toList()) {
        all.add(rule);
        for (int copy = 1; copy < times; copy++) {
          all.add(copy(rule, copy));
        }
      }
      return all;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private WrittenRule copy(WrittenRule rule, int copy) {
    int number = rule.id().lastIndexOf('-') + 1;
    String name = rule.name().substring(0, number) + copy + rule.name().substring(number);
    WrittenRule renamed = new WrittenRule(name, rule.metadata(), rule.patterns(), rule.action());
    return speaking ? renamed : askingForMore(renamed);
  }

  private static WrittenRule askingForMore(WrittenRule rule) {
    for (int place = 0; place < rule.patterns().size(); place++) {
      WrittenPattern pattern = rule.patterns().get(place);
      if (pattern.variable().filter(rule.action().variable()::equals).isPresent()) {
        return rule.with(place, askingForMore(pattern));
      }
    }
    throw new IllegalArgumentException(rule.id() + " names no part.");
  }

  private static WrittenPattern askingForMore(WrittenPattern pattern) {
    List<WrittenCondition> conditions = new ArrayList<>(pattern.conditions());
    conditions.add(is(Presence.FITTED));
    conditions.add(is(Presence.NOT_FITTED));
    return new WrittenPattern(pattern.type(), pattern.variable(), pattern.negated(), conditions);
  }

  private static WrittenCondition is(Presence presence) {
    WrittenValue value = new WrittenValue.Constant(presence);
    return new WrittenCondition.AnyOf(List.of(new WrittenComparison("presence", true, value)));
  }

  /** The rule files with the copies behind the rules, as an auditor would read them. */
  private Optional<InputStream> open(String file) {
    Optional<InputStream> original = RuleBaseFiles.ofThisArtifact().open(file);
    return file.endsWith(".drl") ? original.map(this::withCopies) : original;
  }

  private InputStream withCopies(InputStream original) {
    try (InputStream in = original) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      StringBuilder all = new StringBuilder(text);
      for (int copy = 1; copy < times; copy++) {
        int number = copy;
        all.append(
            ID.matcher(text).replaceAll(found -> Matcher.quoteReplacement(found.group() + number)));
      }
      return new ByteArrayInputStream(all.toString().getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
