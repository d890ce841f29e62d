package org.brakerules;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * The JSON Schemas (draft 2020-12) of everything that is written of a job beside its decision, as
 * shipped in this library. Those of jobs and decisions are in {@link
 * org.brakerules.model.json.JsonSchemas}.
 *
 * <pre>{@code
 * String schema = AnswerSchemas.plan();
 * String document = WorkPlanWriter.write(BrakeRules.standard().plan(job));
 * }</pre>
 */
public final class AnswerSchemas {

  private AnswerSchemas() {}

  /** The schema of what {@link org.brakerules.figure.FiguresWriter} writes. */
  public static String figures() {
    return resource("figures");
  }

  /** The schema of what {@link org.brakerules.vehicle.VehicleStatusWriter} writes. */
  public static String vehicle() {
    return resource("vehicle");
  }

  /** The schema of what {@link org.brakerules.parts.PartsListWriter} writes. */
  public static String parts() {
    return resource("parts");
  }

  /** The schema of what {@link org.brakerules.work.WorkPlanWriter} writes. */
  public static String plan() {
    return resource("plan");
  }

  /** The schema of what {@link org.brakerules.finalcheck.FinalCheckWriter} writes. */
  public static String finalCheck() {
    return resource("final-check");
  }

  /** The schema of what {@link org.brakerules.record.JobRecordWriter} writes. */
  public static String record() {
    return resource("record");
  }

  private static String resource(String name) {
    String file = "/org/brakerules/json/" + name + ".schema.json";
    try (InputStream in = AnswerSchemas.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException("The schema " + file + " is missing in this jar.");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
