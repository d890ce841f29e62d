package org.brakerules.harness.batch;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.brakerules.JobRefusedException;
import org.brakerules.harness.batch.Reject.Kind;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.json.InvalidJobException;
import org.brakerules.model.json.JobReader;
import org.brakerules.model.json.Problem;

/** Reads, decides and writes the lines of one chunk. Each thread has its own. */
final class ChunkWork {

  private final Form form;
  private final ByteArrayOutputStream decided = new ByteArrayOutputStream();
  private final ByteArrayOutputStream rejected = new ByteArrayOutputStream();
  private final ByteArrayOutputStream line = new ByteArrayOutputStream();
  private final Tally tally = new Tally();

  private ChunkWork(Form form) {
    this.form = form;
  }

  /** Does the work. */
  static ChunkResult of(Chunk chunk, Form form, Packing packing) {
    ChunkWork work = new ChunkWork(form);
    chunk.lines().forEach(work::answer);
    return new ChunkResult(
        packing.decided().pack(work.decided.toByteArray()),
        packing.rejected().pack(work.rejected.toByteArray()),
        work.tally,
        chunk.after(),
        chunk.position());
  }

  private void answer(Line one) {
    if (one.isBlank()) {
      reject(one, Kind.BLANK, List.of("found an empty line, expected a job in JSON"));
      return;
    }
    try {
      decide(one, JobReader.read(new ByteArrayInputStream(one.bytes())));
    } catch (InvalidJobException invalid) {
      reject(one, Kind.INVALID, invalid.problems().stream().map(ChunkWork::inLine).toList());
    } catch (JobRefusedException refused) {
      reject(one, Kind.REFUSED, refused.problems());
    } catch (RuntimeException mistake) {
      reject(one, Kind.FAILURE, List.of("a mistake in this program: " + mistake));
    }
  }

  private void decide(Line one, BrakeJob job) {
    try {
      line.reset();
      CompactDecision decision = form.write(one.number(), job, line);
      line.writeTo(decided);
      tally.add(decision);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void reject(Line one, Kind kind, List<String> problems) {
    rejected.writeBytes(new Reject(one, kind, problems).asJson());
    tally.add(kind, 1);
  }

  /** A job on one line has columns only. */
  private static String inLine(Problem problem) {
    String message = problem.message();
    String first = "line 1, ";
    return message.startsWith(first) ? message.substring(first.length()) : message;
  }
}
