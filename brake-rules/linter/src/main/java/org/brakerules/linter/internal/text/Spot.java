package org.brakerules.linter.internal.text;

/**
 * A place in a file.
 *
 * @param file the file, relative to the resources
 * @param line the line, from 1
 * @param column the column, from 1
 */
public record Spot(String file, int line, int column) {}
