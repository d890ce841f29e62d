package org.brakerules.harness;

import org.brakerules.BrakeRules;
import org.brakerules.harness.batch.CompactForm;
import org.brakerules.harness.batch.Form;
import org.brakerules.harness.batch.FullForm;

/** How a batch writes its decisions, as the word is typed. */
enum BatchForm {
  /** The whole document of each decision. */
  FULL {
    @Override
    Form of(BrakeRules rules) {
      return new FullForm(rules::decide);
    }
  },
  /** Ids, and a key before them. */
  COMPACT {
    @Override
    Form of(BrakeRules rules) {
      return CompactForm.of(rules);
    }
  };

  abstract Form of(BrakeRules rules);
}
