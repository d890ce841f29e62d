package org.brakerules.harness.batch;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.decision.RoadAnswer;
import org.brakerules.model.decision.Verdict;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Side;
import org.brakerules.model.part.WheelEndPath;

/** Writes line number and reference, and finds every drum undecided, without asking any rule. */
record ReferenceForm(String heading) implements Form {

  ReferenceForm() {
    this("number and reference\n");
  }

  @Override
  public String name() {
    return "reference";
  }

  @Override
  public CompactDecision write(long line, BrakeJob job, OutputStream out) throws IOException {
    out.write((line + " " + job.reference() + "\n").getBytes(StandardCharsets.UTF_8));
    return decision(job);
  }

  static CompactDecision decision(BrakeJob job) {
    CompactDecision.Part drum =
        new CompactDecision.Part(
            WheelEndPath.of(2, Side.LEFT).place(PartKind.DRUM),
            Disposition.UNDECIDED,
            false,
            RoadAnswer.SILENT,
            List.of(new CompactDecision.Reason("GENERAL-030", Verdict.UNDECIDED, List.of())),
            List.of(),
            List.of());
    return new CompactDecision(
        job.reference(), job.date(), job.ruleSet().id(), List.of(drum), List.of());
  }
}
