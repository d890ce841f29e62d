package org.brakerules.linter.internal.base;

/**
 * Something in the conditions that does not belong to the rule language.
 *
 * @param name its name, such as {@code eval}
 * @param offset where it starts
 */
public record Construct(String name, int offset) {}
