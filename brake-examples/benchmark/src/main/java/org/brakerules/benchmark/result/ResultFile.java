package org.brakerules.benchmark.result;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The results of a run as JSON: the one place everything published about speed comes from. */
public final class ResultFile {

  private static final ObjectMapper JSON = new ObjectMapper();

  private ResultFile() {}

  /** Writes it. */
  public static void write(Results results, Path file) throws IOException {
    Files.writeString(file, text(results));
  }

  /** The results as JSON. */
  public static String text(Results results) throws IOException {
    ObjectNode root = JSON.createObjectNode();
    root.put("date", results.date()).put("command", results.command());
    root.put("rounds", results.rounds()).put("caution", results.caution());
    root.put("ruleBase", results.ruleBase());
    root.putObject("machine")
        .put("processor", results.machine().processor())
        .put("threads", results.machine().threads())
        .put("system", results.machine().system())
        .put("java", results.machine().java());
    results.figures().forEach(one -> put(one, root.withArray("figures").addObject()));
    results.sections().forEach(one -> put(one, root.withArray("sections").addObject()));
    return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
  }

  private static void put(Figure figure, ObjectNode node) {
    node.put("id", figure.id()).put("title", figure.title()).put("unit", figure.unit());
    node.put("atMost", figure.target().atMost()).put("reach", figure.target().reach());
    figure.target().stretch().ifPresent(stretch -> node.put("stretch", stretch));
    figure.measured().ifPresent(measured -> put(measured, node));
  }

  private static void put(Section section, ObjectNode node) {
    node.put("title", section.title()).put("note", section.note());
    for (Section.Line line : section.lines()) {
      ObjectNode put = node.withArray("lines").addObject().put("what", line.what());
      put(line.measured(), put);
      put.put("unit", line.unit());
    }
  }

  private static void put(Measured measured, ObjectNode node) {
    node.put("value", measured.value()).put("error", measured.error());
  }

  /** Reads what {@link #write} wrote. */
  public static Results read(Path file) throws IOException {
    JsonNode root = JSON.readTree(file.toFile());
    JsonNode machine = root.path("machine");
    List<Figure> figures = new ArrayList<>();
    root.path("figures").forEach(one -> figures.add(figure(one)));
    List<Section> sections = new ArrayList<>();
    root.path("sections").forEach(one -> sections.add(section(one)));
    return new Results(
        root.path("date").asText(),
        root.path("command").asText(),
        root.path("rounds").asInt(),
        root.path("caution").asText(),
        root.path("ruleBase").asText(),
        new Machine(
            machine.path("processor").asText(),
            machine.path("threads").asInt(),
            machine.path("system").asText(),
            machine.path("java").asText()),
        figures,
        sections);
  }

  private static Figure figure(JsonNode node) {
    JsonNode stretch = node.path("stretch");
    return new Figure(
        node.path("id").asText(),
        node.path("title").asText(),
        node.path("unit").asText(),
        new Target(
            node.path("atMost").asBoolean(),
            node.path("reach").asDouble(),
            stretch.isMissingNode()
                ? OptionalDouble.empty()
                : OptionalDouble.of(stretch.asDouble())),
        node.has("value") ? Optional.of(measured(node)) : Optional.empty());
  }

  private static Section section(JsonNode node) {
    List<Section.Line> lines = new ArrayList<>();
    node.path("lines")
        .forEach(
            line ->
                lines.add(
                    new Section.Line(
                        line.path("what").asText(), measured(line), line.path("unit").asText())));
    return new Section(node.path("title").asText(), node.path("note").asText(), lines);
  }

  private static Measured measured(JsonNode node) {
    return new Measured(node.path("value").asDouble(), node.path("error").asDouble());
  }
}
