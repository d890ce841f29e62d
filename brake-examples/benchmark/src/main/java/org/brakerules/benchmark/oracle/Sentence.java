package org.brakerules.benchmark.oracle;

import java.util.List;

/** One sentence of the trade: a part of which something is known, and what follows. */
record Sentence(Subject subject, List<Effect> effects) {

  static Sentence when(Subject subject, Effect... effects) {
    return new Sentence(subject, List.of(effects));
  }
}
