package org.brakerules.harness.batch;

/**
 * One line of the input.
 *
 * @param number its number, from 1
 * @param bytes what is in it without the line feed; of a line longer than any job the beginning
 * @param length how long it is in the input, in bytes without the line feed
 */
@SuppressWarnings("ArrayRecordComponent") // handed on once and never compared
record Line(long number, byte[] bytes, long length) {

  /** Whether it is longer than what was kept of it. */
  boolean isCut() {
    return length > bytes.length;
  }

  /** Whether there is nothing but white space in it. */
  boolean isBlank() {
    for (byte one : bytes) {
      if (one != ' ' && one != '\t' && one != '\r') {
        return false;
      }
    }
    return true;
  }
}
