package org.brakerules.harness.batch;

import org.brakerules.model.decision.RuleBaseVersion;

/**
 * What a run must have in common with the one it goes on from; else its output would be of two
 * kinds.
 *
 * @param form the form of the output
 * @param rejects the file of the rejects
 * @param ruleBase which rule base decides
 */
record Settings(String form, String rejects, RuleBaseVersion ruleBase) {}
