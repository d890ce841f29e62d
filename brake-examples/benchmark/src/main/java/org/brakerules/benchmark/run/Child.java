package org.brakerules.benchmark.run;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A process started to be measured, or to measure. */
final class Child {

  /** The Java this process runs on. */
  static final String JAVA = Path.of(System.getProperty("java.home"), "bin", "java").toString();

  private Child() {}

  /** A command that starts Java with the given arguments. */
  static List<String> java(String... args) {
    List<String> command = new ArrayList<>(List.of(JAVA));
    command.addAll(List.of(args));
    return command;
  }

  /**
   * Runs a command to its end, and throws away what it prints.
   *
   * @return the exit code
   */
  static int run(List<String> command) throws IOException, InterruptedException {
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.redirectOutput(ProcessBuilder.Redirect.DISCARD);
    builder.redirectError(ProcessBuilder.Redirect.DISCARD);
    return builder.start().waitFor();
  }

  /**
   * Runs a command to its end, and gives what it prints.
   *
   * @throws IOException if it ends with another exit code than 0
   */
  static String output(List<String> command) throws IOException, InterruptedException {
    File said = Files.createTempFile("said", ".txt").toFile();
    try {
      ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
      int code = builder.redirectOutput(said).start().waitFor();
      String output = Files.readString(said.toPath());
      if (code != 0) {
        throw new IOException(String.join(" ", command) + " ended with " + code + ":\n" + output);
      }
      return output;
    } finally {
      Files.delete(said.toPath());
    }
  }
}
