package org.brakerules.linter.internal.cases;

import java.util.List;
import org.brakerules.linter.internal.base.Mistake;

/**
 * The cases of one component.
 *
 * @param file the file, relative to the resources
 * @param cases those that could be read
 * @param mistakes what kept others from being read
 */
public record CaseFile(String file, List<AuthoredCase> cases, List<Mistake> mistakes) {

  /** Keeps its own copies. */
  public CaseFile {
    cases = List.copyOf(cases);
    mistakes = List.copyOf(mistakes);
  }
}
