package org.brakerules.harness;

import java.util.Collection;
import java.util.TreeSet;
import org.brakerules.model.job.RuleSet;
import org.brakerules.model.text.NearestName;

/** A rule set as it is named on the command line. */
public final class RuleSetName {

  private RuleSetName() {}

  /**
   * Reads the value of an option.
   *
   * @param option the option, such as {@code --rule-set}
   * @param id what was typed
   * @param known the ids of the rule sets there are
   * @throws UsageMistake if it is none of them
   */
  public static RuleSet read(String option, String id, Collection<String> known) {
    if (known.contains(id)) {
      return new RuleSet(id);
    }
    String hint =
        NearestName.of(id, known)
            .map(near -> "did you mean \"" + near + "\"?")
            .orElseGet(() -> "known are " + String.join(", ", new TreeSet<>(known)));
    throw new UsageMistake(option + ": found \"" + id + "\"; " + hint);
  }
}
