package org.brakerules.model.json;

/** What a document is, for messages. */
enum DocumentKind {
  JOB("brake job", "job"),
  SHELF("shelf of kits", "shelf"),
  RECORD("record of finished work", "record");

  private final String inFull;
  private final String inShort;

  DocumentKind(String inFull, String inShort) {
    this.inFull = inFull;
    this.inShort = inShort;
  }

  String inFull() {
    return inFull;
  }

  String inShort() {
    return inShort;
  }
}
