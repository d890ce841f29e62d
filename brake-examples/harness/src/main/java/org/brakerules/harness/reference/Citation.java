package org.brakerules.harness.reference;

/** A citation as rule files and tables write it: the id of a source, and the clause behind a #. */
final class Citation {

  private Citation() {}

  static String source(String citation) {
    return isWhole(citation) ? citation : citation.substring(0, citation.indexOf('#'));
  }

  static boolean isWhole(String citation) {
    return citation.indexOf('#') < 0;
  }

  /** How the page of clauses heads it. */
  static String heading(String citation) {
    return isWhole(citation) ? citation + ", as a whole" : citation;
  }
}
