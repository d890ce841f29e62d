package org.brakerules.harness;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Java started as a process of its own, from a folder. */
record JavaProcess(Path folder) {

  private static final String JAVA =
      Path.of(System.getProperty("java.home"), "bin", "java").toString();

  /** What a process answered. */
  record Answer(int exitCode, String out, String err) {}

  Answer run(String... args) throws IOException, InterruptedException {
    return runWithInput("", args);
  }

  Answer runWithInput(String input, String... args) throws IOException, InterruptedException {
    Path out = Files.createTempFile("out", ".txt");
    Path err = Files.createTempFile("err", ".txt");
    Process process =
        builder(args).redirectOutput(out.toFile()).redirectError(err.toFile()).start();
    process.getOutputStream().write(input.getBytes(StandardCharsets.UTF_8));
    process.getOutputStream().close();
    Answer answer = new Answer(exitCode(process), Files.readString(out), Files.readString(err));
    Files.delete(out);
    Files.delete(err);
    return answer;
  }

  /** Reads one line of the output and then closes the pipe. */
  Answer readOneLine(String... args) throws IOException, InterruptedException {
    Process process = builder(args).start();
    String line;
    try (var out = process.inputReader(StandardCharsets.UTF_8)) {
      line = out.readLine();
    }
    String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Answer(exitCode(process), line, err);
  }

  private ProcessBuilder builder(String... args) {
    List<String> command = new ArrayList<>(List.of(JAVA));
    command.addAll(List.of(args));
    return new ProcessBuilder(command).directory(folder.toFile());
  }

  private static int exitCode(Process process) throws InterruptedException {
    if (!process.waitFor(2, TimeUnit.MINUTES)) {
      process.destroyForcibly();
      throw new IllegalStateException("The process does not end.");
    }
    return process.exitValue();
  }
}
