package org.brakerules.harness;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.brakerules.BrakeRules;
import org.brakerules.InspectionPoint;
import org.brakerules.harness.needs.Inspection;
import org.brakerules.harness.needs.InspectionReader;
import org.brakerules.harness.needs.JobTemplate;
import org.brakerules.harness.needs.NeedsJson;
import org.brakerules.harness.needs.NeedsTable;
import org.brakerules.harness.report.Page;
import org.brakerules.harness.report.Palette;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists what has to be looked at and measured before a brake can be decided. */
@Command(
    name = "needs",
    description = "Lists what to look at and measure before a brake can be decided.",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:the points are listed",
      "2:wrong usage",
      "4:the output cannot be written",
      "70:a mistake in this program"
    })
final class NeedsCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Option(
      names = "--layout",
      split = ",",
      paramLabel = "NAME=VALUE",
      description = {
        "How the brake is built, as in the layout of a job, for example"
            + " camshaft=tube,drumMount=outboard,chamber.type=30."
      })
  private Map<String, String> layout = new LinkedHashMap<>();

  @Option(
      names = "--scope",
      paramLabel = "SCOPE",
      required = true,
      description = "How far it will be taken apart: wheel-on, drum-off, shoes-off, camshaft-out.")
  private String scope = "";

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description = "The day of the inspection, for example 2026-11-20; today if left out.")
  private String date = LocalDate.now(ZoneId.systemDefault()).toString();

  @Option(
      names = "--rule-set",
      paramLabel = "ID",
      description = "The rules that hold on the road, for example us-federal; all if left out.")
  private String ruleSet = "";

  @ArgGroup private Form form = new Form();

  /** In which form the points are printed. */
  private static final class Form {

    @Option(names = "--json", description = "Print the points as JSON.")
    private boolean json;

    @Option(
        names = "--template",
        description = {
          "Print a job to fill in, with every part and property needed. It is refused until every"
              + " blank is filled in; take out what was not measured."
        })
    private boolean template;
  }

  NeedsCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    BrakeRules rules = BrakeRules.standard();
    Inspection inspection =
        new InspectionReader(rules.ruleSets()).read(layout, scope, date, ruleSet);
    terminal.out().print(answer(inspection, points(rules, inspection)));
    return ExitCode.DONE.number();
  }

  private static List<InspectionPoint> points(BrakeRules rules, Inspection asked) {
    return asked
        .ruleSet()
        .map(one -> rules.inspectionPoints(asked.layout(), asked.scope(), asked.date(), one))
        .orElseGet(() -> rules.inspectionPoints(asked.layout(), asked.scope(), asked.date()));
  }

  private String answer(Inspection inspection, List<InspectionPoint> points) {
    if (form.json) {
      return NeedsJson.of(points);
    }
    if (form.template) {
      return JobTemplate.of(inspection, points);
    }
    Page page = new Page(new Palette(false));
    NeedsTable.write(points, page);
    return page.toString();
  }
}
