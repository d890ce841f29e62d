package org.brakerules;

import java.util.Optional;
import org.brakerules.model.decision.Verdict;

/**
 * Whether a rule speaks of a part, and if not, what keeps it from it.
 *
 * @param rule the id of the rule
 * @param title its title
 * @param verdict what it says when it speaks
 * @param whyNot the conditions that do not hold, with the values of the job and how far they are
 *     from their limit; empty if the rule speaks
 */
public record RuleAnswer(String rule, String title, Verdict verdict, Optional<String> whyNot) {}
