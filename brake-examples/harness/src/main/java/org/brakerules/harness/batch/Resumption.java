package org.brakerules.harness.batch;

import java.io.IOException;
import org.brakerules.harness.UsageMistake;
import org.brakerules.model.decision.RuleBaseVersion;

/** Refuses to go on from a run that was called otherwise, or read something else. */
final class Resumption {

  private final StateFile file;
  private final BatchState before;

  Resumption(StateFile file, BatchState before) {
    this.file = file;
    this.before = before;
  }

  void refuseOther(Settings now) {
    Settings then = before.settings();
    refuse(then.form().equals(now.form()), "wrote --form " + then.form() + ", not " + now.form());
    refuse(
        then.rejects().equals(now.rejects()),
        "wrote its rejects to " + then.rejects() + ", not to " + now.rejects());
    refuse(
        then.ruleBase().equals(now.ruleBase()),
        "was decided by rule base " + words(then.ruleBase()) + ", not by " + words(now.ruleBase()));
  }

  /** Passes over what was read, and refuses an input that is another. */
  void refuseOther(LineChunks input) throws IOException {
    refuse(
        input.skipTo(before.input()),
        "read another input: the first " + before.input().lines() + " lines are not the same");
    if (before.finished()) {
      refuse(input.next().isEmpty(), "had read its input to the end, and now there is more of it");
    }
  }

  void refuseShort(long decidedBytes, long rejectedBytes) {
    refuse(
        decidedBytes >= before.decidedBytes() && rejectedBytes >= before.rejectedBytes(),
        "had written more than there is now; somebody has changed its files");
  }

  /** What was finished must be there as it was, because the summary is told of it. */
  void refuseTaken(long decidedBytes, long rejectedBytes) {
    refuse(
        decidedBytes == before.decidedBytes() && rejectedBytes == before.rejectedBytes(),
        "was finished but for its summary, and its files are not as it left them");
  }

  void refuseMissing() {
    refuse(before.finished(), "wrote files that are not there any more");
  }

  private void refuse(boolean same, String how) {
    if (!same) {
      throw new UsageMistake(
          file
              + " tells of an unfinished run that "
              + how
              + "; call it as before, or start afresh with --again");
    }
  }

  private static String words(RuleBaseVersion version) {
    return version.version() + " (" + version.fingerprint() + ")";
  }
}
