package org.brakerules.consumer;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a stranger's program sees that depends on brake-rules alone. The build has compiled it with
 * every warning an error, and run it.
 */
class ConsumerTest {

  private static final Path BUILD = Path.of("target/it/consumer/target");
  private static final Path LOCAL_REPOSITORY = Path.of("target/it/local-repository");

  @Test
  void it_decides_a_job() throws IOException {
    assertThat(Files.readAllLines(BUILD.resolve("decisions.txt")))
        .contains(
            "tractor/axle2/left/camshaft UNDECIDED",
            "tractor/axle2/left/camshaft-bushing/head-end REPLACE",
            "tractor/axle2/left/camshaft-seal/head-end REPLACE");
  }

  @Test
  void it_runs_with_the_engine_without_rule_compiler_and_jackson_and_no_more() throws IOException {
    assertThat(jars())
        .containsExactlyInAnyOrder(
            "brake-model",
            "brake-rules",
            "drools-base",
            "drools-canonical-model",
            "drools-core",
            "drools-kiesession",
            "drools-model-compiler",
            "drools-util",
            "drools-wiring-api",
            "drools-wiring-static",
            "jackson-annotations",
            "jackson-core",
            "jackson-databind",
            "jackson-dataformat-csv",
            "kie-api",
            "kie-internal",
            "kie-memory-compiler",
            "slf4j-api");
  }

  @ParameterizedTest
  @ValueSource(strings = {"brake-model", "brake-rules"})
  void our_jars_come_from_the_folder_repository(String artifact) throws IOException {
    Path origins =
        LOCAL_REPOSITORY
            .resolve("org/brakerules")
            .resolve(artifact)
            .resolve(FolderRepository.VERSION)
            .resolve("_remote.repositories");

    assertThat(Files.readAllLines(origins))
        .contains(artifact + "-" + FolderRepository.VERSION + ".jar>published=");
  }

  /** The names of the jars, without their versions. */
  private static List<String> jars() throws IOException {
    return Files.readAllLines(BUILD.resolve("class-path.txt")).stream()
        .filter(name -> !name.equals("classes"))
        .map(name -> name.replaceFirst("-\\d.*", ""))
        .toList();
  }
}
