package org.brakerules.harness;

import java.util.List;

/**
 * Runs short commands once each, so that the build can keep the classes they load in an archive
 * that the start script uses. Long commands are left out: their start does not matter.
 */
final class ArchiveTraining {

  private static final List<String> COMMANDS =
      List.of("decide", "figures", "vehicle", "parts", "plan");

  private ArchiveTraining() {}

  /**
   * Runs them.
   *
   * @param args the file of a job
   */
  public static void main(String[] args) {
    Terminal terminal = Terminal.ofThisProcess();
    String job = args[0];
    for (String command : COMMANDS) {
      Main.run(terminal, command, job);
    }
    Main.run(terminal, "decide", "--json", job);
    Main.run(terminal, "--help");
  }
}
