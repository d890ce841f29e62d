package org.brakerules.internal.engine;

import org.brakerules.model.decision.Verdict;
import org.brakerules.model.part.Place;

/**
 * What a rule said.
 *
 * @param rule its id
 * @param verdict what
 * @param part of which part
 */
public record Said(String rule, Verdict verdict, Place part) {}
