package org.brakerules.model.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.brakerules.model.decision.Evidence;
import org.brakerules.model.decision.JobDecision;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How a decision is written. */
class DecisionWriterTest {

  private static final JobDecision DECISION = SampleDecision.full();

  @Test
  void a_decision_without_parts_shows_the_frame() {
    assertThat(DecisionWriter.write(SampleDecision.empty()))
        .isEqualTo(
            """
            {
              "ruleBase": {
                "version": "0.1.0",
                "fingerprint": "00ff"
              },
              "date": "2026-11-20",
              "ruleSet": "us-federal",
              "scope": "wheel-on",
              "complete": false,
              "holds": [],
              "decisions": [],
              "next": [],
              "cautions": []
            }
            """);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          /reference                              | "H-4417"
          /complete                               | false
          /holds                                  | ["tractor/axle2/left/camshaft"]
          /decisions/0/disposition                | "undecided"
          /decisions/0/hold                       | true
          /decisions/0/road                       | "open"
          /decisions/0/actions                    | []
          /decisions/0/reasons/0/verdict          | "hold"
          /decisions/0/reasons/0/sentence         | "The shaft is a \\"left\\" one.\\nThe brake takes a right one."
          /decisions/0/reasons/0/evidence/0       | {"kind":"stated","part":"tractor/axle2/left/camshaft","property":"hand","value":"left"}
          /decisions/0/reasons/0/evidence/1       | {"kind":"built","wheelEnd":"tractor/axle2/left","property":"camshaftHand","value":"right"}
          /decisions/0/reasons/0/source/0         | {"id":"COMMON-PRACTICE","title":"Common practice","standing":"common-practice"}
          /decisions/0/needed/0/task              | "measure"
          /decisions/0/needed/0/station           | "spline-end"
          /decisions/0/needed/0/methods           | ["dial-indicator"]
          /decisions/0/needed/0/conditions        | ["after the work"]
          /decisions/0/needed/0/limits/0/comparison | "at-most"
          /decisions/0/needed/1/from              | "wheel-on"
          /decisions/0/lookedAt                   | ["camshaft.crack"]
          /decisions/1/part                       | "tractor/axle2/left/camshaft-bushing/head-end"
          /decisions/1/actions                    | ["Replace both bushings."]
          /decisions/1/reasons/0/evidence/0/kind  | "measured"
          /decisions/1/reasons/0/evidence/0/status | "beyond"
          /decisions/1/reasons/0/evidence/0/limit | {"id":"camshaft-bushing.radial-play.max","comparison":"at-most","value":"0.020 in","source":{"id":"AXLE-MANUAL","clause":"12","title":"Axle manual","standing":"maker"}}
          /decisions/1/reasons/0/evidence/0/reading | {"value":"1/32 in","at":"head-end","method":"dial-indicator","uncertainty":"0.001 in","moment":"after-work"}
          /decisions/1/reasons/0/evidence/0/margin | "0.01125 in"
          /decisions/1/reasons/0/evidence/1       | {"kind":"also-replaced","wheelEnd":"tractor/axle2/left","partKind":"camshaft"}
          /decisions/1/reasons/0/evidence/2       | {"kind":"was-disturbed","part":"tractor/axle2/left/camshaft-bushing/head-end"}
          /decisions/1/withoutLimit/0             | {"part":"tractor/axle2/left/camshaft-bushing/head-end","property":"bore","limitId":"camshaft-bushing.bore.max","status":"no-limit","reading":{"value":"1/32 in","at":"head-end","method":"dial-indicator","uncertainty":"0.001 in","moment":"after-work"}}
          /decisions/1/reasons/0/evidence/3       | {"kind":"unlike-partner","wheelEnd":"tractor/axle2/left","matter":"chamber-size"}
          /next/0                                 | {"part":"tractor/axle2/left/camshaft","point":"camshaft.end-play","bearsOn":["tractor/axle2/left/camshaft"]}
          /cautions/0/text                        | "Cage the spring brake first."
          """)
  void everything_a_decision_says_is_written(String pointer, String json) {
    JsonNode written = SchemaFiles.tree(DecisionWriter.write(DECISION));

    assertThat(written.at(pointer)).hasToString(json);
  }

  @ParameterizedTest
  @CsvSource({
    "/decisions/0/reasons/0/action",
    "/decisions/0/needed/1/instrument",
    "/decisions/0/needed/1/how",
    "/decisions/0/reasons/0/source/0/clause",
    "/decisions/1/withoutLimit/0/limit",
    "/decisions/1/withoutLimit/0/margin"
  })
  void what_is_not_stated_is_left_out(String pointer) {
    assertThat(SchemaFiles.tree(DecisionWriter.write(DECISION)).at(pointer).isMissingNode())
        .isTrue();
  }

  @Test
  void the_sample_has_evidence_of_every_kind() {
    assertThat(
            DECISION.decisions().stream()
                .flatMap(part -> part.reasons().stream())
                .flatMap(reason -> reason.evidence().stream())
                .<Class<?>>map(Object::getClass))
        .containsExactlyInAnyOrder(Evidence.class.getPermittedSubclasses());
  }

  @Test
  void the_compact_form_says_the_same_on_one_line() {
    String compact = DecisionWriter.writeCompact(DECISION);

    assertThat(compact).doesNotContain("\n", "\r", "{ ", ": {");
    assertThat(SchemaFiles.tree(compact))
        .isEqualTo(SchemaFiles.tree(DecisionWriter.write(DECISION)));
  }

  @Test
  void lines_end_with_a_line_feed_on_every_system() {
    assertThat(DecisionWriter.write(DECISION)).doesNotContain("\r").endsWith("}\n");
  }

  @Test
  void writers_and_streams_get_the_same_and_stay_open() {
    StringWriter text = new StringWriter();
    DecisionWriter.write(DECISION, text);
    text.append("|");
    DecisionWriter.writeCompact(DECISION, text);

    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DecisionWriter.write(DECISION, bytes);
    bytes.write('|');
    DecisionWriter.writeCompact(DECISION, bytes);

    assertThat(text)
        .hasToString(DecisionWriter.write(DECISION) + "|" + DecisionWriter.writeCompact(DECISION))
        .hasToString(bytes.toString(StandardCharsets.UTF_8));
  }

  @Test
  void a_full_disk_is_told_as_such() {
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int b) throws IOException {
            throw new IOException("The disk is full.");
          }
        };

    assertThatThrownBy(() -> DecisionWriter.write(DECISION, full))
        .isInstanceOf(UncheckedIOException.class)
        .hasMessageContaining("The disk is full.");
  }
}
