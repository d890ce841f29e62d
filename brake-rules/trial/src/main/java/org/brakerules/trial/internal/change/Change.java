package org.brakerules.trial.internal.change;

import org.brakerules.internal.rule.WrittenRule;

/**
 * One change of one rule.
 *
 * @param words what was changed, such as {@code crack == Sign.SEEN left out}
 * @param rule the rule as changed
 */
public record Change(String words, WrittenRule rule) {}
