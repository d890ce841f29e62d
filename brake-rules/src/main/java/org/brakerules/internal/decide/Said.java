package org.brakerules.internal.decide;

import java.util.List;
import org.brakerules.internal.engine.Finding;
import org.brakerules.model.decision.Evidence;

/**
 * What a rule said of a part.
 *
 * @param finding the rule, its verdict and the part
 * @param evidence what it rests on
 */
record Said(Finding finding, List<Evidence> evidence) {

  static Said of(Finding finding) {
    return new Said(finding, EvidenceOf.finding(finding));
  }
}
