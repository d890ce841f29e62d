package org.brakerules.linter.internal.base;

import org.brakerules.linter.internal.text.Spot;

/**
 * Something that kept a rule or table from being read.
 *
 * @param spot where
 * @param message what was found
 * @param remedy what to write instead
 */
public record Mistake(Spot spot, String message, String remedy) {}
