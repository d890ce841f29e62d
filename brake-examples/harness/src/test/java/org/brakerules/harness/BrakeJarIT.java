package org.brakerules.harness;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.brakerules.harness.JavaProcess.Answer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The jar that users start, in a process of its own and far from the folder it was built in. */
class BrakeJarIT {

  private static final Path BUILT = Path.of("target", "brake.jar");

  @TempDir private Path elsewhere;
  private JavaProcess java;
  private String jar;
  private Path job;

  @BeforeEach
  void the_jar_and_a_job_lie_in_folders_with_blanks_and_umlauts() throws IOException {
    Path folder = Files.createDirectories(elsewhere.resolve("Halle Süd, Prüfstand 2"));
    jar = Files.copy(BUILT, folder.resolve("brake größer.jar")).toString();
    job = Files.copy(DemoJob.WORN_CAMSHAFT.file(), folder.resolve("Welle, rechts außen.json"));
    java = new JavaProcess(elsewhere);
  }

  @Test
  void jar_decides_a_job_as_the_classes_do() throws Exception {
    Answer answer = java.run("-jar", jar, "decide", job.toString());

    assertThat(answer.err()).isEmpty();
    assertThat(answer.exitCode()).isEqualTo(1);
    assertThat(answer.out()).isEqualTo(CommandLineRun.of("decide", job.toString()).out());
  }

  @Test
  void path_may_be_relative_to_the_folder_it_is_started_in() throws Exception {
    String relative = elsewhere.relativize(job).toString();

    assertThat(java.run("-jar", jar, "decide", relative).exitCode()).isEqualTo(1);
  }

  @Test
  void job_may_come_through_a_pipe() throws Exception {
    Answer answer =
        java.runWithInput(DemoJob.WORN_CAMSHAFT.text(), "-jar", jar, "decide", "--json", "-");

    assertThat(answer.exitCode()).isEqualTo(1);
    assertThat(answer.out()).isEqualTo(CommandLineRun.of("decide", "--json", job.toString()).out());
  }

  @Test
  void name_of_a_missing_file_is_written_in_utf_8() throws Exception {
    Answer answer = java.run("-Dfile.encoding=US-ASCII", "-jar", jar, "decide", "Prüfung.json");

    assertThat(answer.exitCode()).isEqualTo(4);
    assertThat(answer.err().lines()).containsExactly("Prüfung.json: no such file");
  }

  @Test
  void pipe_closed_after_the_first_line_is_no_crash() throws Exception {
    List<String> args = new ArrayList<>(List.of("-jar", jar, "decide"));
    args.addAll(Collections.nCopies(20, job.toString()));

    Answer answer = java.readOneLine(args.toArray(String[]::new));

    assertThat(answer.out()).startsWith("Brake job ");
    assertThat(answer.err().lines())
        .containsExactly("brake: the output was cut off, not everything could be written");
    assertThat(answer.exitCode()).isEqualTo(4);
  }

  @Test
  void cases_can_be_run_again_from_the_jar() throws Exception {
    Answer answer = java.run("-jar", jar, "cases", "camshaft-bushing");

    assertThat(answer.exitCode()).isZero();
    assertThat(answer.out()).endsWith("cases, 0 not as expected\n");
  }
}
