package org.brakerules.harness.batch;

/**
 * How far an input was read, and what had been in it up to there. Two inputs with the same mark
 * begin alike.
 *
 * @param lines the lines read so far
 * @param sha256 the SHA-256 of everything read so far, in hexadecimal
 */
record InputMark(long lines, String sha256) {}
