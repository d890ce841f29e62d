package org.brakerules.internal.engine;

import org.drools.model.Rule;

/**
 * A changed rule that lies beside the rules on trial, under the id of the rule it was made from
 * with a number behind a tilde. It speaks only where it was chosen to.
 */
final class Variant {

  private static final char MARK = '~';

  private Variant() {}

  static boolean is(Rule rule) {
    return id(rule).indexOf(MARK) >= 0;
  }

  /** The first word of the name. */
  static String id(Rule rule) {
    return rule.getName().substring(0, rule.getName().indexOf(' '));
  }

  /** The id of the rule that a variant was made from. */
  static String original(Rule variant) {
    return id(variant).substring(0, id(variant).indexOf(MARK));
  }
}
