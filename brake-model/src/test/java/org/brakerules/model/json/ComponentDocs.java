package org.brakerules.model.json;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the components of a record mean, from the param lines of its source. */
final class ComponentDocs {

  private static final Path SOURCES = Path.of("src/main/java");
  private static final Pattern PARAM = Pattern.compile("\\* @param (\\w+) ((?:.|\\n *\\* {4,})+)");
  private static final Pattern LINK = Pattern.compile("\\{@link \\w*#(\\w+)}");
  private static final Pattern CODE = Pattern.compile("\\{@code ([^}]*)}");

  private ComponentDocs() {}

  /** The meaning of one component. */
  static String of(Class<?> record, String component) {
    String meaning = params(record).get(component);
    if (meaning == null) {
      throw new IllegalArgumentException(record + " does not say what " + component + " means.");
    }
    return meaning;
  }

  private static Map<String, String> params(Class<?> record) {
    Map<String, String> meanings = new LinkedHashMap<>();
    Matcher matcher = PARAM.matcher(docOf(record));
    while (matcher.find()) {
      String text = matcher.group(2).replaceAll("\\s*\\n *\\* +", " ");
      meanings.put(matcher.group(1), inJson(text));
    }
    return meanings;
  }

  /** What is empty in a record is left out in JSON, and constants have other names there. */
  private static String inJson(String text) {
    String named =
        LINK.matcher(text)
            .replaceAll(link -> link.group(1).toLowerCase(Locale.ROOT).replace('_', '-'));
    return CODE.matcher(named)
        .replaceAll("$1")
        .replace("may be empty", "may be left out")
        .replace("; empty", "; left out");
  }

  /** The comment right before the record. */
  private static String docOf(Class<?> record) {
    String source = sourceOf(record);
    int declaration = source.indexOf("record " + record.getSimpleName());
    int start = source.lastIndexOf("/**", declaration);
    return source.substring(start, source.indexOf("*/", start));
  }

  private static String sourceOf(Class<?> record) {
    Class<?> top = record.getNestHost();
    try {
      return Files.readString(SOURCES.resolve(top.getName().replace('.', '/') + ".java"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
