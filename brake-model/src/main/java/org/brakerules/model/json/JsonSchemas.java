package org.brakerules.model.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The JSON Schemas (draft 2020-12) of jobs and decisions, as shipped in this library. */
public final class JsonSchemas {

  private JsonSchemas() {}

  /**
   * The schema of what {@link JobReader} reads. The reader refuses more than a schema can say, such
   * as the same part twice.
   */
  public static String job() {
    return resource("job.schema.json");
  }

  /** The schema of what {@link DecisionWriter} writes. */
  public static String decision() {
    return resource("decision.schema.json");
  }

  private static String resource(String name) {
    try (InputStream in = JsonSchemas.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("The schema " + name + " is missing in this jar.");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
