package org.brakerules.linter.internal.base;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.brakerules.linter.internal.text.SourceText;
import org.brakerules.linter.internal.text.Spot;
import org.brakerules.linter.internal.text.Token;
import org.brakerules.linter.internal.text.Token.Kind;

/**
 * One rule of the rule base.
 *
 * @param folder the folder of its file, such as {@code camshaft-bushing}
 * @param source its file, straight quotes read for curly ones
 * @param block the rule as written
 * @param conditions the rule as parsed; empty if it cannot be parsed
 * @param mistakes what kept it from being parsed
 */
public record AuthoredRule(
    String folder,
    SourceText source,
    RuleBlock block,
    Optional<Conditions> conditions,
    List<Mistake> mistakes) {

  /** The name as written, without quotes; empty if there is none. */
  public String name() {
    return block.name().map(Token::value).orElse("");
  }

  /** Whether the name is a text whose quotes are closed. */
  public boolean isNamed() {
    return block
        .name()
        .filter(name -> name.is(Kind.TEXT) || name.is(Kind.SINGLE_QUOTED))
        .isPresent();
  }

  /** The first word of the name. */
  public String id() {
    return name().split(" ", 2)[0];
  }

  /** The patterns; none if the rule cannot be parsed. */
  public List<Pattern> patterns() {
    return conditions.orElse(Conditions.NONE).patterns();
  }

  /** Whether a pattern, not under {@code not}, speaks of this fact type. */
  public boolean speaksOf(String type) {
    return patterns().stream()
        .anyMatch(pattern -> !pattern.negated() && pattern.type().equals(type));
  }

  /** All conditions of all patterns. */
  public Stream<Constraint> constraints() {
    return patterns().stream().flatMap(pattern -> pattern.constraints().stream());
  }

  /** The metadata entries of a key. */
  public List<Metadata> metadata(String key) {
    return block.metadata().stream().filter(entry -> entry.key().is(key)).toList();
  }

  /** The place of a character of the file. */
  public Spot spot(int offset) {
    return source.spot(offset);
  }
}
