package org.brakerules.benchmark.oracle;

import java.util.List;
import org.brakerules.model.part.PartKind;

/** One sentence of the trade: a part of which something is known, and what follows. */
record Sentence(Subject subject, List<Effect> effects) {

  static Sentence when(Subject subject, Effect... effects) {
    return new Sentence(subject, List.of(effects));
  }

  /** A sentence on parts that were found and do not go back. */
  static Sentence whenRenewed(PartKind kind, Effect... effects) {
    return new Sentence(Subject.renewed(kind), List.of(effects));
  }
}
