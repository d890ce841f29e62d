package org.brakerules.benchmark.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The processor time from the start of a Java run time to the end of its first decision: a job in
 * JSON read, decided, and the answer written as JSON.
 *
 * @param harness the folder of the harness, with the start script and {@code target/brake.jar}
 * @param self the jar of this program, for the run time that does nothing
 * @param starts how often each is started in a round
 */
record ColdStart(Path harness, Path self, int starts) {

  static final String BARE = "start.bare";
  static final String BARE_WITH_FLAGS = "start.bare-with-flags";
  static final String JAR = "start.jar";
  static final String ARCHIVE = "start.archive";
  static final String SCRIPT = "start.script";
  private static final String DECIDE = "decide";

  /** With this exit code {@code decide} says of the worn wheel end that parts are not decided. */
  private static final int PARTS_ARE_OPEN = 1;

  /** Whether there is something to start, and a system that counts processor time. */
  boolean isPossible() {
    return ProcessorTime.isCounted() && Files.exists(jar());
  }

  private Path jar() {
    return harness.resolve("target").resolve("brake.jar");
  }

  /**
   * Starts each in turn and adds the milliseconds of one start.
   *
   * @throws IOException if one does not give its decision
   */
  void run(Series series) throws IOException, InterruptedException {
    refuseWithoutDecision();
    for (Map.Entry<String, List<String>> one : commands().entrySet()) {
      double before = ProcessorTime.ofChildren();
      for (int start = 0; start < starts; start++) {
        Child.run(one.getValue());
      }
      series.add(one.getKey(), (ProcessorTime.ofChildren() - before) / starts);
    }
  }

  /** A program that ends at once with a complaint must not be taken for a fast one. */
  private void refuseWithoutDecision() throws IOException, InterruptedException {
    for (List<String> command : commands().values()) {
      boolean decides = command.contains(DECIDE);
      String said = Child.output(command, decides ? PARTS_ARE_OPEN : 0);
      if (decides && !said.startsWith("{")) {
        throw new IOException(String.join(" ", command) + " printed no decision.");
      }
    }
  }

  private Map<String, List<String>> commands() {
    List<String> decide = List.of(DECIDE, "--json", job().toString());
    Path archive = harness.resolve("target").resolve("brake.jsa");
    String withArchive = "-XX:SharedArchiveFile=" + archive;
    String bare = Bare.class.getName();
    Map<String, List<String>> commands = new LinkedHashMap<>();
    commands.put(BARE, Child.java("-cp", self.toString(), bare));
    commands.put(
        BARE_WITH_FLAGS,
        Child.java("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp", self.toString(), bare));
    commands.put(JAR, with(Child.java("-jar", jar().toString()), decide));
    if (Files.exists(archive)) {
      commands.put(ARCHIVE, with(Child.java(withArchive, "-jar", jar().toString()), decide));
      commands.put(SCRIPT, with(List.of("sh", harness.resolve("brake").toString()), decide));
    }
    return commands;
  }

  private Path job() {
    return harness.resolveSibling("jobs").resolve("worn-out-wheel-end.json");
  }

  private static List<String> with(List<String> command, List<String> args) {
    List<String> all = new ArrayList<>(command);
    all.addAll(args);
    return all;
  }
}
