package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The start script, with an archive of classes that fits and with others. */
@DisabledOnOs(OS.WINDOWS)
class StartScriptIT {

  private static final Path BUILT = Path.of("target", "brake.jar");

  @TempDir private Path folder;

  @Test
  void script_answers_as_the_jar_does() throws Exception {
    assertThat(decided(BUILT)).isEqualTo(answer());
  }

  @Test
  void archive_that_was_made_of_another_jar_is_passed_over_in_silence() throws Exception {
    Path jar = copied();
    Path archive = Path.of("target", "brake.jsa");
    if (Files.exists(archive)) {
      Files.copy(archive, folder.resolve("brake.jsa"));
    }
    assertThat(decided(jar)).isEqualTo(answer());
  }

  @Test
  void archive_that_is_none_is_passed_over_in_silence() throws Exception {
    Path jar = copied();
    Files.writeString(folder.resolve("brake.jsa"), "no archive");
    assertThat(decided(jar)).isEqualTo(answer());
  }

  @Test
  void no_archive_is_no_hindrance() throws Exception {
    assertThat(decided(copied())).isEqualTo(answer());
  }

  @Test
  void jar_that_is_not_there_is_named() throws Exception {
    Path missing = folder.resolve("brake.jar");

    assertThat(decided(missing))
        .isEqualTo(
            "brake: there is no " + missing + "; build it, or name another with BRAKE_JAR\n");
  }

  private Path copied() throws IOException {
    return Files.copy(BUILT, folder.resolve("brake.jar"));
  }

  private static String answer() {
    return CommandLineRun.of("decide", DemoJob.WORN_CAMSHAFT.path()).out();
  }

  /** Everything the script says, on standard output and on standard error. */
  private String decided(Path jar) throws IOException, InterruptedException {
    Path said = folder.resolve("said.txt");
    ProcessBuilder script =
        new ProcessBuilder("sh", "brake", "decide", DemoJob.WORN_CAMSHAFT.path());
    script.environment().putAll(Map.of("BRAKE_JAR", jar.toString()));
    Process process = script.redirectErrorStream(true).redirectOutput(said.toFile()).start();
    assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();
    return Files.readString(said);
  }
}
