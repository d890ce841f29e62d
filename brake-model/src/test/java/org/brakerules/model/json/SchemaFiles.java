package org.brakerules.model.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The schema files of this module, made from the records, and what they say of a document. */
final class SchemaFiles {

  private static final List<Path> FOLDERS =
      List.of(
          Path.of("src/main/resources/org/brakerules/model/json"),
          Path.of("target/classes/org/brakerules/model/json"));
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

  private SchemaFiles() {}

  static String job() {
    return text(JobSchema.with(tree(SampleJobs.full())));
  }

  static String decision() {
    return text(DecisionSchema.with(tree(DecisionWriter.write(SampleDecision.full()))));
  }

  /** Writes a schema where it is kept, and where this build looks for it. */
  static void write(String file, String schema) {
    try {
      for (Path folder : FOLDERS) {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve(file), schema);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What a schema refuses about a document. */
  static List<Error> errors(String schema, String document) {
    return REGISTRY
        .getSchema(schema, InputFormat.JSON)
        .validate(
            document,
            InputFormat.JSON,
            context -> context.executionConfig(config -> config.formatAssertionsEnabled(true)));
  }

  static JsonNode tree(String document) {
    try {
      return MAPPER.readTree(document);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(e);
    }
  }

  private static String text(JsonNode schema) {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter);
    try {
      return MAPPER.writer(printer).writeValueAsString(schema) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(e);
    }
  }
}
