package org.brakerules.harness.cases;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.brakerules.BrakeRules;
import org.brakerules.linter.cases.CaseChanges;

/** The files of cases that lie beside the rules; the linter has found nothing wrong with them. */
public final class CaseFiles {

  private static final String RULES = "org/brakerules/rules/";
  private static final String BASELINE = "sound-wheel-end.json";

  private final Function<String, Optional<URL>> files;
  private final List<String> components;

  private CaseFiles(Function<String, Optional<URL>> files, List<String> components) {
    this.files = files;
    this.components =
        components.stream().filter(component -> files.apply(file(component)).isPresent()).toList();
  }

  /** Those of the rules that this program brings. */
  public static CaseFiles ofThisArtifact() {
    return new CaseFiles(
        file -> Optional.ofNullable(BrakeRules.class.getResource("/" + RULES + file)),
        BrakeRules.standard().components());
  }

  /**
   * Those of the rules in a folder.
   *
   * @param resources the folder with {@code org/brakerules/rules} in it
   * @param components its components, in the order they are to be run in
   */
  public static CaseFiles in(Path resources, List<String> components) {
    return new CaseFiles(file -> find(resources.resolve(RULES).resolve(file)), components);
  }

  /** The components that have cases, from the camshaft outwards. */
  public List<String> components() {
    return components;
  }

  /** The cases of a component. */
  public List<RuleCase> cases(String component) {
    JsonNode soundWheelEnd = soundWheelEnd();
    List<RuleCase> cases = new ArrayList<>();
    for (JsonNode written : tree(new ObjectMapper(new YAMLFactory()), file(component))) {
      cases.add(read(component, written, soundWheelEnd));
    }
    return cases;
  }

  /** The cases of all components. */
  public List<RuleCase> all() {
    return components().stream().flatMap(component -> cases(component).stream()).toList();
  }

  /** The sound wheel end that every case starts from. */
  JsonNode soundWheelEnd() {
    return tree(new ObjectMapper(), BASELINE);
  }

  static RuleCase read(String component, JsonNode written, JsonNode soundWheelEnd) {
    CaseFields fields = new CaseFields(written);
    return new RuleCase(
        component,
        fields.text("case"),
        soundWheelEnd,
        CaseChanges.of(written),
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
  }

  /** What a case is about stands under then, part by part; what comes with it under also. */
  private static Map<String, String> dispositions(CaseFields fields) {
    Map<String, String> dispositions = fields.textByName("then");
    fields
        .textsByName("also")
        .forEach(
            (disposition, paths) -> paths.forEach(path -> dispositions.put(path, disposition)));
    return dispositions;
  }

  private static String file(String component) {
    return component + "/" + component + ".cases.yaml";
  }

  private JsonNode tree(ObjectMapper mapper, String file) {
    URL place =
        files.apply(file).orElseThrow(() -> new IllegalStateException("There is no " + file + "."));
    try (InputStream in = place.openStream()) {
      return mapper.readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Optional<URL> find(Path file) {
    try {
      return Files.exists(file) ? Optional.of(file.toUri().toURL()) : Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
