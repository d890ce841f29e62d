package org.brakerules.harness;

import org.brakerules.BrakeRules;
import org.brakerules.model.decision.RuleBaseVersion;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** The command all others belong to. */
@Command(
    name = "brake",
    description = "Decides which parts of an S-cam air drum brake stay and which go.",
    footer = "%nAdvice for a qualified brake technician. The maker's manual and the law decide.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:the command did its work",
      "2:wrong usage",
      "other:see brake COMMAND --help"
    },
    versionProvider = BrakeCommand.Version.class)
final class BrakeCommand implements Runnable {

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help.",
      scope = ScopeType.INHERIT)
  @SuppressWarnings("unused") // asked for by the parser itself
  private boolean help;

  @Option(
      names = {"-V", "--version"},
      versionHelp = true,
      description = "Show the version and the fingerprint of the rule base.")
  @SuppressWarnings("unused") // asked for by the parser itself
  private boolean version;

  @Option(
      names = "--stacktrace",
      description = "Print where a mistake in this program happened.",
      scope = ScopeType.INHERIT)
  private boolean stackTrace;

  boolean stackTrace() {
    return stackTrace;
  }

  @Override
  public void run() {
    throw new UsageMistake(
        "name a command: decide, batch, why, figures, vehicle, parts, plan, sheet, final-check, record, replay, needs, cases, mutate, coverage, lint, changes or reference");
  }

  /** Says which rule base this program brings. */
  static final class Version implements IVersionProvider {

    @Override
    public String[] getVersion() {
      RuleBaseVersion version = BrakeRules.standard().version();
      return new String[] {"brake " + version.version(), "rule base " + version.fingerprint()};
    }
  }
}
