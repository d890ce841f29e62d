package org.brakerules.harness;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.brakerules.BrakeRules;
import org.brakerules.JobRefusedException;
import org.brakerules.model.decision.JobDecision;
import org.brakerules.model.json.DecisionWriter;
import org.brakerules.model.json.InvalidJobException;
import org.brakerules.model.json.JobReader;
import org.brakerules.model.json.Problem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Makes the decision of a filed record again. */
@Command(
    name = "replay",
    description =
        "Decides the job of a filed record again and says whether the decision is the same, and"
            + " where it is not.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:the decision is the same, to the byte",
      "1:it differs, or another rule base made it",
      "2:wrong usage",
      "3:the file holds no record with a job and a decision",
      "4:the file cannot be read",
      "70:a mistake in this program"
    })
final class ReplayCommand implements Callable<Integer> {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final Terminal terminal;

  @Parameters(paramLabel = "RECORD", description = "A document that brake record printed.")
  private Path file = Path.of("");

  ReplayCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    try {
      JsonNode record = MAPPER.readTree(Files.readString(file));
      return replay(record).number();
    } catch (JsonProcessingException noJson) {
      return refuse("holds no JSON; name a document that brake record printed").number();
    } catch (NoSuchFileException missing) {
      terminal.complain(file + ": no such file");
      return ExitCode.NO_ACCESS.number();
    } catch (IOException failure) {
      terminal.complain(file + ": cannot be read");
      return ExitCode.NO_ACCESS.number();
    }
  }

  private ExitCode replay(JsonNode record) {
    JsonNode filed = record.path("decision");
    if (!record.path("job").isObject() || !filed.isObject()) {
      return refuse("holds no \"job\" and \"decision\"; name a document that brake record printed");
    }
    try {
      JobDecision decision =
          BrakeRules.standard().decide(JobReader.read(record.path("job").toString()));
      return compare(filed, MAPPER.readTree(DecisionWriter.writeCompact(decision)));
    } catch (InvalidJobException invalid) {
      return refuse(invalid.problems().stream().map(Problem::message).toList());
    } catch (JobRefusedException refused) {
      return refuse(refused.problems());
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private ExitCode compare(JsonNode filed, JsonNode made) {
    if (filed.equals(made)) {
      terminal.out().println("The decision is the same.");
      return ExitCode.DONE;
    }
    if (!filed.path("ruleBase").equals(made.path("ruleBase"))) {
      terminal
          .out()
          .println(
              "Another rule base made it: "
                  + inWords(filed.path("ruleBase"))
                  + "; this is "
                  + inWords(made.path("ruleBase"))
                  + ".");
    }
    List<String> differences = differences(filed, made);
    differences.forEach(terminal.out()::println);
    if (differences.isEmpty()) {
      terminal.out().println("No part is decided otherwise.");
    }
    return ExitCode.WORK_LEFT;
  }

  private static String inWords(JsonNode ruleBase) {
    return ruleBase.path("version").asText() + ", " + ruleBase.path("fingerprint").asText();
  }

  private static List<String> differences(JsonNode filed, JsonNode made) {
    List<String> lines = new ArrayList<>();
    for (JsonNode one : made.path("decisions")) {
      String part = one.path("part").asText();
      Optional<JsonNode> before = decision(filed, part);
      if (before.isEmpty()) {
        lines.add(part + ": was not decided, now " + disposition(one));
      } else if (!disposition(before.get()).equals(disposition(one))) {
        lines.add(part + ": was " + disposition(before.get()) + ", now " + disposition(one));
      } else if (!before.get().equals(one)) {
        lines.add(part + ": the same, for other reasons or with other checks");
      }
    }
    for (JsonNode one : filed.path("decisions")) {
      if (decision(made, one.path("part").asText()).isEmpty()) {
        lines.add(one.path("part").asText() + ": was decided, now it is no part of the job");
      }
    }
    return lines;
  }

  private static Optional<JsonNode> decision(JsonNode document, String part) {
    for (JsonNode one : document.path("decisions")) {
      if (one.path("part").asText().equals(part)) {
        return Optional.of(one);
      }
    }
    return Optional.empty();
  }

  private static String disposition(JsonNode decision) {
    return decision.path("disposition").asText()
        + (decision.path("hold").asBoolean() ? ", on hold" : "")
        + (decision.has("road") ? ", on the road " + decision.path("road").asText() : "");
  }

  private ExitCode refuse(String problem) {
    return refuse(List.of(problem));
  }

  private ExitCode refuse(List<String> problems) {
    problems.forEach(problem -> terminal.complain(file + ": " + problem));
    return ExitCode.INVALID_INPUT;
  }
}
