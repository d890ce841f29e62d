package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.AnswerSchemas;
import org.brakerules.BrakeRules;
import org.brakerules.calc.Basis;
import org.brakerules.figure.FiguresWriter;
import org.brakerules.finalcheck.CheckResult;
import org.brakerules.finalcheck.FinalCheckWriter;
import org.brakerules.model.assembly.AssemblyRecord;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.json.AssemblyRecordReader;
import org.brakerules.model.json.JobReader;
import org.brakerules.model.json.KitShelfReader;
import org.brakerules.model.kit.KitReach;
import org.brakerules.model.kit.KitShelf;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.AxleMatter;
import org.brakerules.model.part.Scope;
import org.brakerules.parts.Ground;
import org.brakerules.parts.Handling;
import org.brakerules.parts.Item;
import org.brakerules.parts.PartsListWriter;
import org.brakerules.record.JobRecordWriter;
import org.brakerules.vehicle.AxleMatch;
import org.brakerules.vehicle.BrakeCount;
import org.brakerules.vehicle.CriterionStatus;
import org.brakerules.vehicle.VehicleStatusWriter;
import org.brakerules.work.FittedPart;
import org.brakerules.work.Surface;
import org.brakerules.work.WorkLevel;
import org.brakerules.work.WorkPhase;
import org.brakerules.work.WorkPlanWriter;
import org.brakerules.work.WorkStep;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What is written of a job beside its decision is what the shipped schemas say. */
class AnswerSchemasTest {

  private static final BrakeRules RULES = BrakeRules.standard();
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
  private static final Path RECORDS = Path.of("..", "records");
  private static final Path SHELF = Path.of("..", "kits", "harrowmere-shelf.json");

  @ParameterizedTest
  @EnumSource(DemoJob.class)
  void everything_written_of_a_demo_job_is_accepted(DemoJob demo) {
    BrakeJob job = JobReader.read(demo.file());

    accepts(AnswerSchemas.figures(), FiguresWriter.write(RULES.figures(job)));
    accepts(AnswerSchemas.vehicle(), VehicleStatusWriter.write(RULES.vehicle(job)));
    accepts(AnswerSchemas.parts(), PartsListWriter.write(RULES.parts(job)));
    accepts(AnswerSchemas.parts(), PartsListWriter.write(RULES.parts(job, shelf())));
    accepts(AnswerSchemas.plan(), WorkPlanWriter.write(RULES.plan(job)));
    accepts(
        AnswerSchemas.finalCheck(),
        FinalCheckWriter.write(RULES.finalCheck(job, AssemblyRecord.EMPTY)));
    accepts(AnswerSchemas.record(), JobRecordWriter.write(RULES.record(job)));
  }

  @ParameterizedTest
  @EnumSource(
      value = DemoJob.class,
      names = {"FINISHED_REBUILD", "TRACTOR_AND_TRAILER"})
  void final_check_and_record_of_finished_work_are_accepted(DemoJob demo) {
    BrakeJob job = JobReader.read(demo.file());
    AssemblyRecord finished = AssemblyRecordReader.read(RECORDS.resolve(demo.file().getFileName()));

    accepts(AnswerSchemas.finalCheck(), FinalCheckWriter.write(RULES.finalCheck(job, finished)));
    accepts(AnswerSchemas.record(), JobRecordWriter.write(RULES.record(job, finished)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "number":1,          | "number":0,
          "number":1,          | ``
          "phase":"arrive"     | "phase":"depart"
          "scope":"camshaft-out" | "scope":"all"
          "use":"goes-back"    | "use":"thrown-away"
          "level":"wheel-end"  | "level":"wheel-end","height":2
          "hold":false         | "hold":"no"
          "part":"axle2/left/  | "part":"axle2/
          """)
  void plan_with_something_else_in_it_is_refused(String written, String instead) {
    String plan = WorkPlanWriter.write(RULES.plan(JobReader.read(DemoJob.FINISHED_REBUILD.file())));

    assertThat(plan).contains(written);
    assertThat(errors(AnswerSchemas.plan(), plan.replace(written, instead))).isNotEmpty();
  }

  /** Where each closed list of words stands, and the constants that are written there. */
  static Stream<Words> words() {
    return Stream.of(
        new Words(AnswerSchemas.figures(), "/$defs/basis/properties/kind", Basis.Kind.values()),
        new Words(AnswerSchemas.figures(), "/$defs/standing", Standing.values()),
        new Words(AnswerSchemas.vehicle(), "/$defs/axleStatus/properties/kind", AxleKind.values()),
        new Words(AnswerSchemas.vehicle(), "/$defs/match/properties/matter", AxleMatter.values()),
        new Words(
            AnswerSchemas.vehicle(),
            "/$defs/match/properties/likeness",
            AxleMatch.Likeness.values()),
        new Words(
            AnswerSchemas.vehicle(), "/$defs/brake/properties/stroke", BrakeCount.Stroke.values()),
        new Words(
            AnswerSchemas.vehicle(),
            "/$defs/criterion/properties/answer",
            CriterionStatus.Answer.values()),
        new Words(AnswerSchemas.vehicle(), "/$defs/standing", Standing.values()),
        new Words(AnswerSchemas.parts(), "/$defs/line/properties/handling", Handling.values()),
        new Words(AnswerSchemas.parts(), "/$defs/total/properties/handling", Handling.values()),
        new Words(AnswerSchemas.parts(), "/$defs/reason/properties/kind", Ground.Kind.values()),
        new Words(AnswerSchemas.parts(), "/$defs/chosen/properties/for", KitReach.values()),
        new Words(AnswerSchemas.plan(), "/$defs/scope", Scope.values()),
        new Words(AnswerSchemas.plan(), "/$defs/step/properties/phase", WorkPhase.values()),
        new Words(AnswerSchemas.plan(), "/$defs/step/properties/level", WorkLevel.values()),
        new Words(AnswerSchemas.plan(), "/$defs/step/properties/air", WorkStep.Air.values()),
        new Words(AnswerSchemas.plan(), "/$defs/surface", Surface.values()),
        new Words(AnswerSchemas.plan(), "/$defs/fitted/properties/use", FittedPart.Use.values()),
        new Words(AnswerSchemas.plan(), "/$defs/standing", Standing.values()),
        new Words(
            AnswerSchemas.finalCheck(),
            "/$defs/check/properties/status",
            CheckResult.Status.values()),
        new Words(AnswerSchemas.record(), "/$defs/standing", Standing.values()));
  }

  @ParameterizedTest
  @MethodSource("words")
  void words_of_a_schema_are_those_of_the_library(Words words) {
    assertThat(tree(words.schema()).at(words.at()).path("enum"))
        .extracting(JsonNode::asText)
        .containsExactlyElementsOf(words.written());
  }

  @Test
  void every_closed_list_of_words_is_compared() {
    Map<String, Long> compared =
        words().collect(Collectors.groupingBy(Words::schema, Collectors.counting()));

    assertThat(compared)
        .allSatisfy(
            (schema, lists) ->
                assertThat(tree(schema).findValues("enum")).hasSize(Math.toIntExact(lists)));
  }

  /**
   * A closed list of words in a schema.
   *
   * @param schema the schema
   * @param at where in it
   * @param written the words that are written there
   */
  record Words(String schema, String at, List<String> written) {

    Words(String schema, String at, Enum<?>[] constants) {
      this(
          schema,
          at,
          Arrays.stream(constants)
              .map(one -> one.name().toLowerCase(Locale.ROOT).replace('_', '-'))
              .toList());
    }

    @Override
    public String toString() {
      return tree(schema).path("title").asText() + at;
    }
  }

  private static KitShelf shelf() {
    return new KitShelfReader(RULES.items().stream().map(Item::id).toList()).read(SHELF);
  }

  private static void accepts(String schema, String document) {
    assertThat(errors(schema, document)).isEmpty();
  }

  private static List<Error> errors(String schema, String document) {
    return REGISTRY
        .getSchema(schema, InputFormat.JSON)
        .validate(
            document,
            InputFormat.JSON,
            context -> context.executionConfig(config -> config.formatAssertionsEnabled(true)));
  }

  private static JsonNode tree(String document) {
    try {
      return MAPPER.readTree(document);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}
