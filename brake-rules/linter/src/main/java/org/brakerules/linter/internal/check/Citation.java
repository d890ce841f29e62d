package org.brakerules.linter.internal.check;

import java.util.ArrayList;
import java.util.List;
import org.brakerules.linter.internal.base.RuleBase;

/**
 * One source as cited, such as {@code US-ARMY-TM-5-4210-220-12#4-30.4}.
 *
 * @param id the id of the source, without the clause
 * @param start where it starts in the cited text
 */
record Citation(String id, int start) {

  /** Every source cited in a text, between semicolons. */
  static List<Citation> all(String text) {
    List<Citation> citations = new ArrayList<>();
    int start = 0;
    for (String part : text.split(";", -1)) {
      int blanks = part.length() - part.stripLeading().length();
      citations.add(new Citation(part.strip().split("#", 2)[0], start + blanks));
      start += part.length() + 1;
    }
    return citations;
  }

  /** Whether it is known; where no source is, the table of sources has a problem of its own. */
  boolean isKnown(RuleBase base) {
    return base.sourceIds().contains(id)
        || (!id.isEmpty() && base.sourceIds().stream().allMatch(String::isEmpty));
  }

  /** What is wrong with it, if it is not known. */
  String fault() {
    return id.isEmpty()
        ? "a source is left empty"
        : "\"" + id + "\" is not in the table of sources";
  }

  /** What to cite instead. */
  String remedy(RuleBase base) {
    return id.isEmpty()
        ? "take the semicolon out, or cite an id of sources.csv"
        : Remedy.known(id, base.sourceIds(), "add it to sources.csv, or cite one that is there");
  }
}
