package org.brakerules.record;

import org.brakerules.finalcheck.FinalCheckWriter;
import org.brakerules.internal.json.AnswerJson;
import org.brakerules.model.json.DecisionWriter;
import org.brakerules.model.json.JobWriter;

/** Writes the record of a job as one JSON document, on one line. */
public final class JobRecordWriter {

  private final AnswerJson out;

  private JobRecordWriter(AnswerJson out) {
    this.out = out;
  }

  /** The record of one job. The same job and rule base give the same text, to the byte. */
  public static String write(JobRecord record) {
    return AnswerJson.document(out -> new JobRecordWriter(out).record(record));
  }

  private void record(JobRecord record) {
    out.document("job", JobWriter.write(record.job()));
    out.document("decision", DecisionWriter.writeCompact(record.decision()));
    record
        .finalCheck()
        .ifPresent(check -> out.document("finalCheck", FinalCheckWriter.write(check)));
    out.objects("keep", record.retention(), this::retention);
  }

  private void retention(Retention retention) {
    out.text("id", retention.id());
    out.text("what", retention.what());
    out.text("keep", retention.keep());
    out.object(
        "source",
        () -> {
          out.text("id", retention.source().id());
          out.text("title", retention.source().title());
          out.text("standing", retention.source().standing());
        });
  }
}
