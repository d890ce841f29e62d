package org.brakerules.harness;

/** Rules that cannot be tried, because something is wrong with them or with their cases. */
final class MistakenRulesException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  MistakenRulesException(String message) {
    super(message);
  }
}
