package org.brakerules.harness.reference;

/**
 * One page of the book.
 *
 * @param file the file it is written to, below the folder of the reference
 * @param markdown its text
 */
record Page(String file, String markdown) {}
