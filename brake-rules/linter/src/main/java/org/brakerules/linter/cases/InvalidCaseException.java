package org.brakerules.linter.cases;

/** What a case changes makes no job. The message says what is wrong and what to write instead. */
public final class InvalidCaseException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private final String pointer;
  private final String found;
  private final String remedy;

  InvalidCaseException(String pointer, String found, String remedy) {
    super(found + "; " + remedy);
    this.pointer = pointer;
    this.found = found;
    this.remedy = remedy;
  }

  /** Where in the case, as a JSON Pointer (RFC 6901) below it. */
  public String pointer() {
    return pointer;
  }

  /** What is wrong. */
  public String found() {
    return found;
  }

  /** What to write instead. */
  public String remedy() {
    return remedy;
  }
}
