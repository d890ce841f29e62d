package org.brakerules.linter.internal.check;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.brakerules.linter.cases.CaseChanges;
import org.brakerules.linter.cases.CaseJob;
import org.brakerules.linter.cases.InvalidCaseException;
import org.brakerules.linter.internal.base.Mistake;
import org.brakerules.linter.internal.cases.AuthoredCase;
import org.brakerules.linter.internal.language.PartPaths;
import org.brakerules.model.job.BrakeJob;
import org.brakerules.model.json.InvalidJobException;
import org.brakerules.model.json.Problem;

/** Makes the jobs of cases; a sound axle that several are compared with is made once. */
final class CaseJobs {

  private static final String OF_SOUND_AXLE = "the sound axle it is compared with: ";

  private final JsonNode sound;
  private final JobNames names;
  private final Map<CaseChanges, List<Located>> soundAxles = new ConcurrentHashMap<>();

  /** Something wrong with a job, and where it comes from in the case. */
  private record Located(String origin, String found, String remedy) {

    static Located of(Problem problem, CaseJob job) {
      String origin = job.origin(problem.pointer());
      String where = origin.isEmpty() ? problem.pointer() : origin;
      return new Located(
          origin, CaseJobProblem.found(where, problem), CaseJobProblem.remedy(problem));
    }

    Mistake in(AuthoredCase one, String before) {
      return new Mistake(one.spots().value(origin), one.says(before + found), remedy);
    }
  }

  CaseJobs(JsonNode sound, JobNames names) {
    this.sound = sound;
    this.names = names;
  }

  /**
   * What is wrong with the job of a case, or else with the sound axle it is compared with. A part
   * that is none is told by the check of parts.
   */
  List<Mistake> mistakes(AuthoredCase one) {
    CaseChanges changes = CaseChanges.of(one.written()).ofParts(PartPaths::isBelowWheelEnd);
    try {
      List<Located> own = problems(CaseJob.of(sound, changes));
      return own.isEmpty()
          ? in(one, OF_SOUND_AXLE, soundAxles.computeIfAbsent(changes.soundAxle(), this::problems))
          : in(one, "", own);
    } catch (InvalidCaseException noJob) {
      return in(one, "", List.of(new Located(noJob.pointer(), noJob.found(), noJob.remedy())));
    }
  }

  private static List<Mistake> in(AuthoredCase one, String before, List<Located> problems) {
    return problems.stream().map(problem -> problem.in(one, before)).toList();
  }

  private List<Located> problems(CaseChanges changes) {
    return problems(CaseJob.of(sound, changes));
  }

  private List<Located> problems(CaseJob job) {
    try {
      return unknownNames(job, job.read());
    } catch (InvalidJobException invalid) {
      return invalid.problems().stream().map(problem -> Located.of(problem, job)).toList();
    }
  }

  /** Those of the sound wheel end are told once, and not with every case that starts from it. */
  private List<Located> unknownNames(CaseJob job, BrakeJob read) {
    return names.unknown(read).stream()
        .filter(unknown -> !job.origin(unknown.pointer()).isEmpty())
        .map(
            unknown ->
                new Located(job.origin(unknown.pointer()), unknown.found(), unknown.remedy()))
        .toList();
  }
}
