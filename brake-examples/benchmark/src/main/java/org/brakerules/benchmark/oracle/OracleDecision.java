package org.brakerules.benchmark.oracle;

import java.util.List;
import org.brakerules.model.decision.Disposition;

/**
 * What the oracle says of one part. Sentences, evidence, road answers, the order of the looks and
 * cautions are not its matter.
 *
 * @param disposition what to do with it
 * @param hold whether work on it must stop
 * @param reasons every reason, the gravest first
 * @param checks every limit of its kind, with how its readings stand
 * @param open the ids of the points that must still be looked at, measured or stated
 */
public record OracleDecision(
    Disposition disposition,
    boolean hold,
    List<OracleReason> reasons,
    List<OracleCheck> checks,
    List<String> open) {}
