package org.brakerules.harness.reference;

/** A page or table of the rule base that no book can be made of. The message says which and why. */
public final class BookMistake extends RuntimeException {

  private static final long serialVersionUID = 1L;

  BookMistake(String message) {
    super(message);
  }
}
