package org.brakerules.linter;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.List;

/** Problems in the open format SARIF 2.1.0, which editors and code hosts read. */
public final class SarifLog {

  private static final String SCHEMA =
      "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

  /** What all file names are relative to. */
  private static final String BASE = "RESOURCES";

  private static final DefaultIndenter INDENTER = new DefaultIndenter("  ", "\n");

  private final JsonGenerator json;

  private SarifLog(JsonGenerator json) {
    this.json = json;
  }

  /**
   * Writes problems as one SARIF log with one run.
   *
   * @param problems the problems of a rule base
   * @param resources the folder that was linted
   * @return the log, with a line feed at its end
   */
  public static String of(List<LintProblem> problems, Path resources) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.setPrettyPrinter(
          new DefaultPrettyPrinter().withObjectIndenter(INDENTER).withArrayIndenter(INDENTER));
      new SarifLog(json).write(problems, resources);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text + "\n";
  }

  private void write(List<LintProblem> problems, Path resources) throws IOException {
    json.writeStartObject();
    json.writeStringField("$schema", SCHEMA);
    json.writeStringField("version", "2.1.0");
    json.writeArrayFieldStart("runs");
    json.writeStartObject();
    writeTool();
    json.writeObjectFieldStart("originalUriBaseIds");
    writeText(BASE, "uri", folder(resources));
    json.writeEndObject();
    json.writeStringField("columnKind", "utf16CodeUnits");
    json.writeArrayFieldStart("results");
    for (LintProblem problem : problems) {
      writeResult(problem);
    }
    json.writeEndArray();
    json.writeEndObject();
    json.writeEndArray();
    json.writeEndObject();
  }

  /** The folder as the standard wants it: absolute, with a slash at its end. */
  private static String folder(Path resources) {
    String uri = resources.toAbsolutePath().normalize().toUri().toString();
    return uri.endsWith("/") ? uri : uri + "/";
  }

  /** The name of a file with every character that a URI does not take written in another way. */
  private static String relative(String file) {
    try {
      return new URI(null, null, file, null).toASCIIString();
    } catch (URISyntaxException e) {
      throw new IllegalStateException("A path alone is always a URI, but not " + file, e);
    }
  }

  private void writeTool() throws IOException {
    json.writeObjectFieldStart("tool");
    json.writeObjectFieldStart("driver");
    json.writeStringField("name", "brake-rules-linter");
    json.writeArrayFieldStart("rules");
    for (LintKind kind : LintKind.values()) {
      json.writeStartObject();
      json.writeStringField("id", kind.id());
      writeText("shortDescription", "text", kind.title() + ".");
      writeText("defaultConfiguration", "level", "error");
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
    json.writeEndObject();
  }

  private void writeResult(LintProblem problem) throws IOException {
    json.writeStartObject();
    json.writeStringField("ruleId", problem.kind().id());
    json.writeStringField("level", "error");
    writeText("message", "text", problem.inWords());
    json.writeArrayFieldStart("locations");
    json.writeStartObject();
    json.writeObjectFieldStart("physicalLocation");
    json.writeObjectFieldStart("artifactLocation");
    json.writeStringField("uri", relative(problem.file()));
    json.writeStringField("uriBaseId", BASE);
    json.writeEndObject();
    json.writeObjectFieldStart("region");
    json.writeNumberField("startLine", problem.line());
    json.writeNumberField("startColumn", problem.column());
    json.writeEndObject();
    json.writeEndObject();
    json.writeEndObject();
    json.writeEndArray();
    json.writeEndObject();
  }

  private void writeText(String object, String field, String text) throws IOException {
    json.writeObjectFieldStart(object);
    json.writeStringField(field, text);
    json.writeEndObject();
  }
}
