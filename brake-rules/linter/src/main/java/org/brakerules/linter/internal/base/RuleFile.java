package org.brakerules.linter.internal.base;

import java.util.List;
import org.brakerules.linter.internal.text.SourceText;
import org.brakerules.linter.internal.text.Token;

/**
 * The rules of one component.
 *
 * @param folder its folder, such as {@code camshaft-bushing}
 * @param source the file as written; its rules are read with straight quotes for curly ones
 * @param outside everything before, between and after the rules
 * @param rules the rules in the order written
 */
public record RuleFile(
    String folder, SourceText source, List<Token> outside, List<AuthoredRule> rules) {}
