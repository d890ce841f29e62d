package org.brakerules.harness.cases;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.brakerules.BrakeRules;

/** The files of cases that lie beside the rules. */
public final class CaseFiles {

  private static final String RULES = "/org/brakerules/rules/";
  private static final String BASELINE = "sound-wheel-end.json";

  private CaseFiles() {}

  /** The components that have cases, from the camshaft outwards. */
  public static List<String> components() {
    return BrakeRules.standard().components().stream()
        .filter(component -> open(file(component)).isPresent())
        .toList();
  }

  /**
   * The cases of a component.
   *
   * @throws InvalidCaseException if they are not written as they should be
   */
  public static List<RuleCase> cases(String component) {
    String file = file(component);
    List<RuleCase> cases = new ArrayList<>();
    for (JsonNode node : tree(new ObjectMapper(new YAMLFactory()), file)) {
      cases.add(read(component, file + ", case " + (cases.size() + 1), node));
    }
    return cases;
  }

  /** The cases of all components. */
  public static List<RuleCase> all() {
    return components().stream().flatMap(component -> cases(component).stream()).toList();
  }

  /** The sound wheel end that every case starts from. */
  static ObjectNode baseline() {
    return (ObjectNode) tree(new ObjectMapper(), BASELINE);
  }

  static RuleCase read(String component, String where, JsonNode node) {
    CaseFields fields = new CaseFields(where, node);
    RuleCase read =
        new RuleCase(
            component,
            fields.text("case"),
            new RuleCase.Changes(
                fields.byName("job"),
                fields.byName("unit"),
                fields.byName("axle"),
                fields.byName("layout"),
                fields.byNameTwice("change"),
                fields.texts("remove"),
                fields.says("partner", "none"),
                fields.says("partner", "none") ? Map.of() : fields.byNameTwice("partner"),
                fields.byName("partnerLayout")),
            new RuleCase.Expected(
                fields.texts("fires"),
                fields.texts("near"),
                fields.text("fails"),
                fields.textsByName("speaks"),
                dispositions(fields),
                fields.texts("holds"),
                fields.texts("needs"),
                fields.textByName("road")),
            fields.text("source"));
    fields.refuseOthers();
    return read;
  }

  /** What a case is about stands under then, part by part; what comes with it under also. */
  private static Map<String, String> dispositions(CaseFields fields) {
    Map<String, String> dispositions = fields.textByName("then");
    fields
        .textsByName("also")
        .forEach(
            (disposition, paths) ->
                paths.forEach(path -> putOnce(fields, dispositions, path, disposition)));
    return dispositions;
  }

  private static void putOnce(
      CaseFields fields, Map<String, String> dispositions, String path, String disposition) {
    if (dispositions.putIfAbsent(path, disposition) != null) {
      throw fields.mistake("also names " + path + ", which is named already");
    }
  }

  private static String file(String component) {
    return component + "/" + component + ".cases.yaml";
  }

  private static JsonNode tree(ObjectMapper mapper, String file) {
    try (InputStream in =
        open(file).orElseThrow(() -> new InvalidCaseException("There is no " + file + "."))) {
      return mapper.readTree(in);
    } catch (JsonProcessingException notReadable) {
      throw new InvalidCaseException(file + ": " + notReadable.getMessage());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Optional<InputStream> open(String file) {
    return Optional.ofNullable(BrakeRules.class.getResourceAsStream(RULES + file));
  }
}
