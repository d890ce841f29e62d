package org.brakerules.internal.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** A sentence of a rule with names in braces, cut at them once and filled for every job. */
public final class Sentence {

  private static final Pattern NAME = Pattern.compile("\\{(\\w+)}");

  /**
   * A name and the words before it.
   *
   * @param before the words
   * @param name the name, without its braces
   */
  private record Gap(String before, String name) {}

  private final String text;
  private final List<Gap> gaps = new ArrayList<>();
  private final String end;

  /** Reads the text of a rule. */
  public Sentence(String text) {
    this.text = text;
    Matcher matcher = NAME.matcher(text);
    int from = 0;
    while (matcher.find()) {
      gaps.add(new Gap(text.substring(from, matcher.start()), matcher.group(1)));
      from = matcher.end();
    }
    end = text.substring(from);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Sentence that && text.equals(that.text);
  }

  @Override
  public int hashCode() {
    return text.hashCode();
  }

  @Override
  public String toString() {
    return text;
  }

  /** The sentence as the rule has it. */
  public String text() {
    return text;
  }

  /** The names, in the order of the sentence. */
  List<String> names() {
    return gaps.stream().map(Gap::name).toList();
  }

  /**
   * The sentence with its names filled in.
   *
   * @param values the value of a name; a name without one stays as it is
   */
  public String filled(Function<String, Optional<String>> values) {
    if (gaps.isEmpty()) {
      return text;
    }
    StringBuilder filled = new StringBuilder(text.length() * 2);
    for (Gap gap : gaps) {
      filled.append(gap.before());
      Optional<String> value = values.apply(gap.name());
      if (value.isPresent()) {
        filled.append(value.get());
      } else {
        filled.append('{').append(gap.name()).append('}');
      }
    }
    return filled.append(end).toString();
  }
}
