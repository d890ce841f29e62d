package org.brakerules.benchmark.run;

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
    return output(command, 0);
  }

  /**
   * Runs a command to its end, and gives what it prints.
   *
   * @param wanted the exit code it is to end with
   * @throws IOException if it ends with another
   */
  static String output(List<String> command, int wanted) throws IOException, InterruptedException {
    Path said = Files.createTempFile("said", ".txt");
    Path complained = Files.createTempFile("complained", ".txt");
    try {
      ProcessBuilder builder = new ProcessBuilder(command).redirectError(complained.toFile());
      int code = builder.redirectOutput(said.toFile()).start().waitFor();
      String output = Files.readString(said);
      if (code != wanted) {
        throw new IOException(
            "%s ended with %d:%n%s%s"
                .formatted(String.join(" ", command), code, output, Files.readString(complained)));
      }
      return output;
    } finally {
      Files.delete(said);
      Files.delete(complained);
    }
  }
}
