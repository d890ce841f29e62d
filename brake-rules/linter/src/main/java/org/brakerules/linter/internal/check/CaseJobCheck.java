package org.brakerules.linter.internal.check;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Optional;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.cases.AuthoredCase;
import org.brakerules.linter.internal.text.SourceText;
import org.brakerules.model.json.InvalidJobException;
import org.brakerules.model.json.JobReader;

/** What a case changes makes a job; what is wrong with the job is told where the case says it. */
final class CaseJobCheck implements Check {

  @Override
  public void check(RuleBase base, Findings findings) {
    Optional<JsonNode> sound = base.soundWheelEnd().flatMap(CaseJobCheck::tree);
    if (sound.isEmpty()) {
      return; // told by the check of that file
    }
    CaseJobs jobs = new CaseJobs(sound.get(), new JobNames(base));
    List<AuthoredCase> cases = base.cases().toList();
    cases.parallelStream()
        .flatMap(one -> jobs.mistakes(one).stream())
        .toList()
        .forEach(mistake -> findings.add(LintKind.CASE_JOB, mistake, ""));
  }

  private static Optional<JsonNode> tree(SourceText text) {
    try {
      JobReader.read(text.text());
      return Optional.of(new ObjectMapper().readTree(text.text()));
    } catch (InvalidJobException | JsonProcessingException noJob) {
      return Optional.empty();
    }
  }
}
