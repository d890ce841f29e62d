package org.brakerules.benchmark.speed;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.json.JobReader;

/** The demo jobs, which travel in this artifact. */
public final class DemoJobs {

  private DemoJobs() {}

  /**
   * The document of a job.
   *
   * @param name the name of its file without the ending, such as {@code worn-out-wheel-end}
   */
  public static String text(String name) {
    String file = "/org/brakerules/benchmark/jobs/" + name + ".json";
    try (InputStream in = DemoJobs.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalArgumentException("There is no demo job " + name + ".");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The job itself. */
  public static BrakeJob job(String name) {
    return JobReader.read(text(name));
  }
}
