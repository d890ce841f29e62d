package org.brakerules;

import java.util.List;
import org.brakerules.model.decision.Source;
import org.brakerules.model.decision.Verdict;

/**
 * A rule of the rule base, as it describes itself.
 *
 * @param id the id, such as {@code CAMSHAFT-BUSHING-010}; it is never given to another rule
 * @param component the folder it lies in, such as {@code camshaft-bushing}
 * @param title the title
 * @param because the finding, with the names that each job fills in braces
 * @param action what to do; empty if there is nothing to do
 * @param source where it comes from
 * @param verdict what it says of a part
 * @param reads everything it reads of a job: points such as {@code camshaft.crack}, properties such
 *     as {@code layout.camshaft}, and ids of limits
 * @param text the rule as its file has it
 */
public record Rule(
    String id,
    String component,
    String title,
    String because,
    String action,
    List<Source> source,
    Verdict verdict,
    List<String> reads,
    String text) {

  /** Keeps its own copies of the lists. */
  public Rule {
    source = List.copyOf(source);
    reads = List.copyOf(reads);
  }
}
