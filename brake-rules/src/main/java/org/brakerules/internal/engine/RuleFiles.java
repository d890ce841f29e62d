package org.brakerules.internal.engine;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.brakerules.internal.table.RuleBaseException;
import org.brakerules.internal.table.RuleBaseFiles;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.decision.Verdict;

/** The rule files as their authors wrote them, which travel in the jar for auditors to read. */
final class RuleFiles {

  private static final Pattern RULE =
      Pattern.compile("^rule \"([A-Z0-9-]+) .*?^end$", Pattern.MULTILINE | Pattern.DOTALL);
  private static final Pattern VERDICT = Pattern.compile("verdict\\.(\\w+)\\(");

  private RuleFiles() {}

  /** The text of every rule by its id. */
  static Map<String, String> texts(RuleBaseFiles files) {
    Map<String, String> texts = new LinkedHashMap<>();
    for (String component : Tables.components()) {
      files
          .open(Tables.file(component, "drl"))
          .map(RuleFiles::read)
          .ifPresent(file -> split(file, texts));
    }
    return texts;
  }

  /** The one verdict a rule gives. */
  static Verdict verdict(String id, String text) {
    return find(VERDICT, text)
        .map(RuleFiles::verdict)
        .orElseThrow(() -> new RuleBaseException("Rule " + id + " gives no verdict."));
  }

  private static Verdict verdict(String call) {
    return switch (call) {
      case "replace" -> Verdict.REPLACE;
      case "clean" -> Verdict.CLEAN;
      case "adjust" -> Verdict.ADJUST;
      case "hold" -> Verdict.HOLD;
      case "lookAt" -> Verdict.LOOK_AT;
      case "measureAgain" -> Verdict.MEASURE_AGAIN;
      default -> throw new RuleBaseException("There is no verdict \"" + call + "\".");
    };
  }

  private static Optional<String> find(Pattern pattern, String text) {
    Matcher matcher = pattern.matcher(text);
    return matcher.find() ? Optional.of(matcher.group(1)) : Optional.empty();
  }

  private static void split(String file, Map<String, String> texts) {
    Matcher matcher = RULE.matcher(file);
    while (matcher.find()) {
      texts.put(matcher.group(1), matcher.group());
    }
  }

  private static String read(InputStream opened) {
    try (InputStream in = opened) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
