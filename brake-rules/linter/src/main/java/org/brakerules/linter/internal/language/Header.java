package org.brakerules.linter.internal.language;

import java.util.List;

/** The lines every rule file begins with. */
public final class Header {

  /** The lines, the empty ones too. */
  public static final List<String> LINES =
      List.of(
          "package org.brakerules.rules;",
          "",
          "import org.brakerules.internal.fact.*;",
          "import org.brakerules.model.layout.*;",
          "import org.brakerules.model.part.*;",
          "import org.brakerules.model.reading.*;",
          "",
          "global org.brakerules.internal.fact.Verdicts verdict;",
          "");

  private Header() {}
}
