package org.brakerules.linter.internal.check;

import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.text.SourceText;
import org.brakerules.linter.internal.text.Spot;
import org.brakerules.model.json.InvalidJobException;
import org.brakerules.model.json.JobReader;
import org.brakerules.model.json.Problem;

/** The sound wheel end, which every case starts from, is there and is a job. */
final class SoundWheelEndCheck implements Check {

  private static final String FILE = "org/brakerules/rules/sound-wheel-end.json";

  @Override
  public void check(RuleBase base, Findings findings) {
    if (base.soundWheelEnd().isPresent()) {
      check(base.soundWheelEnd().get(), new JobNames(base), findings);
    } else if (base.caseFiles().findAny().isPresent()) {
      findings.add(
          LintKind.CASE_JOB,
          new Spot(FILE, 1, 1),
          "there is no such file, and every case starts from it",
          "add the job of one wheel end, the left one of axle 2, with every point looked at");
    }
  }

  private static void check(SourceText text, JobNames names, Findings findings) {
    try {
      names
          .unknown(JobReader.read(text.text()))
          .forEach(
              unknown ->
                  findings.add(
                      LintKind.CASE_JOB,
                      text.spot(text.text().indexOf("\"" + unknown.name() + "\"")),
                      unknown.found(),
                      unknown.remedy()));
    } catch (InvalidJobException invalid) {
      invalid.problems().forEach(problem -> add(text.file(), problem, findings));
    }
  }

  private static void add(String file, Problem problem, Findings findings) {
    findings.add(
        LintKind.CASE_JOB,
        new Spot(file, problem.line(), problem.column()),
        CaseJobProblem.found(problem.pointer(), problem),
        CaseJobProblem.remedy(problem));
  }
}
