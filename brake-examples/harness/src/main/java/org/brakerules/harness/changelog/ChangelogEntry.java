package org.brakerules.harness.changelog;

/**
 * One entry of a section.
 *
 * @param line the line on which it begins, counted from 1
 * @param heading the heading in bold that it stands under, such as {@code Verdicts}; empty if none
 * @param text all of it without its dash, on one line however it was wrapped
 */
public record ChangelogEntry(int line, String heading, String text) {}
