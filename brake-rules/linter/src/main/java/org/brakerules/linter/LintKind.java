package org.brakerules.linter;

import java.util.Locale;

/** What can be wrong with a rule base. */
public enum LintKind {
  STRAY_FILE(
      "Rules outside the one rule file of their folder, or a file that nobody reads in the folder of a rule set"),
  HEADER("The header differs from the fixed one"),
  OUTSIDE_RULES("Something else than rules in a rule file"),
  SYNTAX("A rule that cannot be read"),
  UNCLOSED_QUOTE("A quote that is opened and not closed on its line"),
  CURLY_QUOTE("A curly quote"),
  SINGLE_QUOTE("A text in single quotes"),
  COMMENT("A comment inside a rule, or a rule inside a comment"),

  RULE_ID("A rule id out of form, order or place"),
  REPEATED_RULE_ID("A rule id that is there twice"),
  RULE_TITLE("A title that is no short plain sentence"),
  RULE_ATTRIBUTE("An attribute such as salience"),

  MISSING_METADATA("A rule without its source, finding or action"),
  UNKNOWN_METADATA("A metadata key that nobody reads"),
  REPEATED_METADATA("A metadata key that is there twice"),
  METADATA_FORM("Metadata that is not one text in brackets"),
  UNKNOWN_SOURCE("A source that is not in the table of sources"),
  SENTENCE("A finding or action that is no full sentence"),
  UNKNOWN_NAME_IN_SENTENCE("A name in braces that the rule cannot fill"),

  EMPTY_CONDITIONS("A rule without conditions, which fires always"),
  FORBIDDEN_CONSTRUCT("A construct outside the rule language"),
  QUALIFIED_TYPE("A fact type written with its package"),
  UNKNOWN_TYPE("A fact type that does not exist"),
  UNKNOWN_PROPERTY("A property that the fact does not have"),
  UNKNOWN_CONSTANT("A constant that does not exist"),
  UNKNOWN_VARIABLE("A variable that no earlier pattern names"),
  UNKNOWN_LIMIT("A limit that is in no table of limits"),
  UNNAMED_LIMIT("A reading beyond any limit at all"),
  NOT_JOINED("Patterns that may speak of different wheel ends"),
  NEGATED_FACT("The absence of a fact that only findings make"),
  NEGATED_SIGN("A sign taken for seen or not seen although nobody may have looked"),
  NUMBER("A number in a rule"),
  COMPARISON("Larger or smaller in a rule"),
  MEASUREMENT("A reading in a condition"),
  WRONG_VALUE("A value that a property can never have"),
  CONDITION_FORM("A condition outside the rule language"),

  ACTION("Something else than one verdict after then"),
  TWO_VERDICTS("Two verdicts in one rule"),
  UNKNOWN_VERDICT("A verdict that does not exist"),
  FACT_CHANGE("A rule that changes facts"),
  UNKNOWN_POINT("An inspection point that is in no table of points"),
  POINT_OF_ANOTHER_PART("An inspection point of another kind of part"),

  TABLE_FORM("A table that cannot be read"),
  TABLE_ID("A row whose id is out of form or there twice"),
  LIMIT_WITHOUT_POINT("A limit on a property that no inspection point asks for"),
  MISSING_CELL("A cell left empty that means nothing when it is empty"),
  UNKNOWN_WORD("A word that is not in the list of its column"),
  TABLE_PROPERTY("A property that the part of the row does not have, or that is not measured"),
  TABLE_VALUE("A limit without its unit, or in the unit of something else"),
  TABLE_DATE("A date that is no day, or a last day before the first"),
  SELECTOR("A choice of parts by something they never have or are"),
  WRONG_FINDS("A sign that finds a fact, or a measurement that finds a fault"),
  LIMIT_OVERLAP("Two rows of one limit that are for one part on one day"),
  LIMIT_GAP("Days between two rows of one limit on which neither holds"),
  LIMIT_FITS_NOTHING("A row of a limit that no part can ever be in"),

  UNKNOWN_ID("A name in a table that nothing of the rule base has"),

  CASE_FORM("A file of cases, or a key of one, that cannot be read"),
  CASE_KEY("A key that no case has"),
  CASE_NAME("A case without a name of its own"),
  CASE_EXPECTS_NOTHING("A case that expects nothing"),
  CASE_RULE("A rule that is in no rule file"),
  CASE_PART("A part that no wheel end has"),
  CASE_ANSWER("An answer that no part is ever given"),
  CASE_JOB("A change that makes no brake job"),

  UNREAD_POINT("An inspection point that no rule and no limit reads"),
  UNREAD_PART("A kind of part that no rule looks at"),
  UNREAD_SIGN("A sign that no rule looks at"),
  NEEDLESS_EXCEPTION("A row of unread.csv that excepts nothing"),
  UNASKED_PROPERTY("A rule that reads what no inspection point asks for"),

  SAME_RULE("A rule that says what another rule says"),
  CONFLICT("A milder verdict on the conditions of a worse one"),
  CONTRADICTION("Conditions of one pattern that are never true at once"),
  NEVER_REPLACED("A rule that waits for a replacement that no rule asks for"),
  NEVER_THERE("A part at a station where it never is"),
  LIMIT_OF_ANOTHER_PART("A limit of one kind of part and a reading of another");

  private final String title;

  LintKind(String title) {
    this.title = title;
  }

  /** The name in messages, such as {@code unknown-limit}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What is wrong, in a few words. */
  public String title() {
    return title;
  }
}
