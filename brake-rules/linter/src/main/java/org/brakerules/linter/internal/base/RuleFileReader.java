package org.brakerules.linter.internal.base;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakerules.linter.internal.text.SourceText;
import org.brakerules.linter.internal.text.Token;
import org.brakerules.linter.internal.text.Token.Kind;
import org.brakerules.linter.internal.text.Tokens;
import org.drools.drl.ast.descr.PackageDescr;
import org.drools.drl.ast.descr.RuleDescr;
import org.drools.drl.parser.DrlParser;
import org.drools.drl.parser.DroolsParserException;
import org.drools.drl.parser.ParserError;
import org.kie.internal.builder.conf.LanguageLevelOption;

/**
 * Reads a rule file with the parser of the rule engine. One broken rule does not hide the others:
 * then each rule is parsed alone.
 */
final class RuleFileReader {

  private final String folder;
  private final SourceText source;
  private final BlockReader blocks;

  private RuleFileReader(String folder, SourceText source) {
    this.folder = folder;
    this.source = source;
    this.blocks = new BlockReader(source);
  }

  static RuleFile read(String folder, SourceText source) {
    RuleFileReader reader = new RuleFileReader(folder, StraightQuotes.in(source));
    return new RuleFile(folder, source, reader.blocks.outside(), reader.rules());
  }

  private List<AuthoredRule> rules() {
    boolean quotesHold = blocks.blocks().stream().allMatch(RuleFileReader::quotesHold);
    List<RuleDescr> parsed = quotesHold ? parse(source.text(), new ArrayList<>()) : List.of();
    List<AuthoredRule> rules = new ArrayList<>();
    for (int i = 0; i < blocks.blocks().size(); i++) {
      RuleBlock block = blocks.blocks().get(i);
      boolean together = parsed.size() == blocks.blocks().size() && isOf(parsed.get(i), block);
      rules.add(together ? rule(block, parsed.get(i)) : parsedAlone(block));
    }
    return List.copyOf(rules);
  }

  private AuthoredRule parsedAlone(RuleBlock block) {
    if (!quotesHold(block)) {
      return new AuthoredRule(folder, source, block, Optional.empty(), List.of());
    }
    List<ParserError> errors = new ArrayList<>();
    List<RuleDescr> parsed = parse(onlyThis(block), errors);
    if (parsed.size() == 1 && isOf(parsed.get(0), block)) {
      return rule(block, parsed.get(0));
    }
    return new AuthoredRule(
        folder, source, block, Optional.empty(), List.of(mistake(block, errors)));
  }

  private AuthoredRule rule(RuleBlock block, RuleDescr parsed) {
    Conditions conditions = ConditionReader.read(source, block, parsed);
    return new AuthoredRule(folder, source, block, Optional.of(conditions), List.of());
  }

  private static List<RuleDescr> parse(String text, List<ParserError> errors) {
    DrlParser parser = new DrlParser(LanguageLevelOption.DRL6);
    try {
      PackageDescr parsed = parser.parse(null, text);
      parser.getErrors().stream()
          .filter(ParserError.class::isInstance)
          .map(ParserError.class::cast)
          .forEach(errors::add);
      return parsed == null || parser.hasErrors() ? List.of() : parsed.getRules();
    } catch (DroolsParserException e) {
      return List.of();
    }
  }

  /** The text with every other rule blanked out, so that all places stay. */
  private String onlyThis(RuleBlock block) {
    String blanks = source.text().replaceAll("[^\n]", " ");
    return blanks.substring(0, block.start())
        + source.text().substring(block.start(), block.end())
        + blanks.substring(block.end());
  }

  /** Whether the parser saw the same rule with the same action as we did. */
  private static boolean isOf(RuleDescr parsed, RuleBlock block) {
    return block.name().map(Token::value).orElse("").equals(parsed.getName())
        && parsed.getNamedConsequences().isEmpty()
        && words(Tokens.of(String.valueOf(parsed.getConsequence()))).equals(words(block.action()));
  }

  private static List<String> words(List<Token> tokens) {
    return tokens.stream().filter(token -> !token.is(Kind.COMMENT)).map(Token::text).toList();
  }

  private static boolean quotesHold(RuleBlock block) {
    return block.tokens().stream().noneMatch(token -> token.is(Kind.UNCLOSED));
  }

  private Mistake mistake(RuleBlock block, List<ParserError> errors) {
    int offset =
        errors.stream()
            .map(error -> source.lineStart(error.getRow()) + error.getCol())
            .filter(place -> place >= block.start())
            .findFirst()
            .orElse(block.start());
    return errors.isEmpty()
        ? SyntaxSlip.secondThen(source, block)
        : SyntaxSlip.explain(source, block, offset);
  }
}
