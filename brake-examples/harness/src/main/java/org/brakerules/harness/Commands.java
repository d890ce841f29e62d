package org.brakerules.harness;

import java.util.List;
import picocli.CommandLine;

/** The commands, by the names they are asked for with. */
final class Commands {

  static final List<String> NAMES =
      List.of(
          "decide",
          "batch",
          "figures",
          "vehicle",
          "parts",
          "plan",
          "sheet",
          "final-check",
          "record",
          "replay",
          "needs",
          "cases",
          "why",
          "mutate",
          "coverage",
          "lint",
          "changes",
          "reference");

  private Commands() {}

  /**
   * Adds the command that stands first; all of them if none does, for help and for guesses at what
   * was meant. Making all takes a good part of the time of a first decision.
   */
  static void add(CommandLine commandLine, Terminal terminal, List<String> args) {
    List<String> asked = args.isEmpty() ? List.of() : args.subList(0, 1);
    List<String> made = NAMES.containsAll(asked) && !asked.isEmpty() ? asked : NAMES;
    made.forEach(name -> commandLine.addSubcommand(command(name, terminal)));
  }

  private static Object command(String name, Terminal terminal) {
    return switch (name) {
      case "decide" -> new DecideCommand(terminal);
      case "batch" -> new BatchCommand(terminal);
      case "figures" -> new FiguresCommand(terminal);
      case "vehicle" -> new VehicleCommand(terminal);
      case "parts" -> new PartsCommand(terminal);
      case "plan" -> new PlanCommand(terminal);
      case "sheet" -> new SheetCommand(terminal);
      case "final-check" -> new FinalCheckCommand(terminal);
      case "record" -> new RecordCommand(terminal);
      case "replay" -> new ReplayCommand(terminal);
      case "needs" -> new NeedsCommand(terminal);
      case "cases" -> new CasesCommand(terminal);
      case "why" -> new WhyCommand(terminal);
      case "mutate" -> new MutateCommand(terminal);
      case "coverage" -> new CoverageCommand(terminal);
      case "lint" -> new LintRulesCommand(terminal);
      case "changes" -> new ChangesCommand(terminal);
      case "reference" -> new ReferenceCommand(terminal);
      default -> throw new IllegalArgumentException("There is no command " + name + ".");
    };
  }
}
