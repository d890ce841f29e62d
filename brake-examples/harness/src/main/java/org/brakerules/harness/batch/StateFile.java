package org.brakerules.harness.batch;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.brakerules.harness.PrettyJson;
import org.brakerules.harness.UsageMistake;
import org.brakerules.harness.batch.Disk.OpenFile;
import org.brakerules.model.decision.RuleBaseVersion;

/** The small file beside an unfinished output that says where to go on. */
final class StateFile {

  private static final int FORM = 1;
  private static final String STATE = "state";
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final Disk disk;
  private final Path file;
  private final Path beside;

  StateFile(Disk disk, Path file) {
    this.disk = disk;
    this.file = file;
    this.beside = beside(file);
  }

  /** Where the next state lies until it is whole. */
  static Path beside(Path file) {
    return file.resolveSibling(file.getFileName() + ".new");
  }

  boolean exists() {
    return disk.exists(file);
  }

  /** Puts a state in the place of the one before, in one go. */
  void write(BatchState state) throws FileSystemException {
    try (OpenFile out = disk.open(beside)) {
      out.cutTo(0);
      out.append(PrettyJson.of(json(state)).getBytes(StandardCharsets.UTF_8));
      out.sync();
    }
    disk.replace(beside, file);
  }

  @Override
  public String toString() {
    return file.toString();
  }

  void delete() throws FileSystemException {
    disk.delete(beside);
    disk.delete(file);
  }

  /**
   * Reads the state.
   *
   * @throws UsageMistake if it is none
   */
  BatchState read() throws IOException {
    try {
      JsonNode json = MAPPER.readTree(Files.readString(file));
      if (TallyJson.number(json, STATE) != FORM) {
        throw new IllegalArgumentException("it is of another version");
      }
      return state(json);
    } catch (IllegalArgumentException | JacksonException | CharacterCodingException damaged) {
      throw new UsageMistake(
          file + " is no state of an unfinished batch, or is damaged; --again starts afresh");
    }
  }

  private static ObjectNode json(BatchState state) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put(
        "about", "An unfinished brake batch. The same command goes on; --again starts afresh.");
    json.put(STATE, FORM);
    json.put("form", state.settings().form());
    json.put("rejectsFile", state.settings().rejects());
    json.putObject("ruleBase")
        .put("version", state.settings().ruleBase().version())
        .put("fingerprint", state.settings().ruleBase().fingerprint());
    json.putObject("input")
        .put("lines", state.input().lines())
        .put("sha256", state.input().sha256());
    json.put("decidedBytes", state.decidedBytes());
    json.put("rejectedBytes", state.rejectedBytes());
    json.put("finished", state.finished());
    json.set("tally", TallyJson.of(state.tally()));
    return json;
  }

  private static BatchState state(JsonNode json) {
    JsonNode ruleBase = json.path("ruleBase");
    JsonNode input = json.path("input");
    return new BatchState(
        new Settings(
            text(json, "form"),
            text(json, "rejectsFile"),
            new RuleBaseVersion(text(ruleBase, "version"), text(ruleBase, "fingerprint"))),
        new InputMark(TallyJson.number(input, "lines"), text(input, "sha256")),
        TallyJson.number(json, "decidedBytes"),
        TallyJson.number(json, "rejectedBytes"),
        json.path("finished").asBoolean(),
        TallyJson.read(json.path("tally")));
  }

  private static String text(JsonNode json, String name) {
    JsonNode value = json.path(name);
    if (!value.isTextual()) {
      throw new IllegalArgumentException("\"" + name + "\" is no text");
    }
    return value.textValue();
  }
}
