package org.brakerules.harness.work;

import java.util.List;
import java.util.stream.Collectors;
import org.brakerules.finalcheck.CheckResult;
import org.brakerules.finalcheck.CheckResult.Status;
import org.brakerules.finalcheck.FinalCheck;
import org.brakerules.finalcheck.PlaceResult;
import org.brakerules.harness.report.Page;
import org.brakerules.harness.report.Palette;
import org.brakerules.model.decision.LimitInForce;

/** The final check of a job for people to read: what keeps it back first. */
public final class FinalCheckReport {

  private static final int LABEL = 13;

  private final Page page = new Page(new Palette(false));

  private FinalCheckReport() {}

  /** The report of one final check. */
  public static String of(FinalCheck check) {
    FinalCheckReport report = new FinalCheckReport();
    report.write(check);
    return report.page.toString();
  }

  private void write(FinalCheck check) {
    String reference = check.reference().isEmpty() ? "" : " " + check.reference();
    page.paragraph(0, "Final check of brake job" + reference);
    page.labelled(2, "Inspected", 12, check.date().toString());
    page.labelled(2, "Rule set", 12, check.ruleSet().id());
    page.labelled(2, "Answer", 12, check.released() ? "released" : "not released");
    check.places().forEach(this::place);
  }

  private void place(PlaceResult place) {
    String heading = place.on() + ": " + (place.released() ? "released" : "not released");
    page.gap();
    page.paragraph(0, heading);
    page.paragraph(0, "=".repeat(heading.length()));
    if (!place.by().isEmpty()) {
      page.labelled(2, "recorded by", LABEL, place.by());
    }
    place.keptBackBy().forEach(why -> page.labelled(2, "kept back", LABEL, why));
    for (Status status : List.of(Status.FAILED, Status.NOT_RECORDED, Status.PASSED)) {
      place.checks().stream().filter(one -> one.status() == status).forEach(this::check);
    }
  }

  private void check(CheckResult check) {
    page.gap();
    page.labelled(2, check.id(), LABEL, check.question());
    String after = check.releases() ? "" : " (after the release)";
    page.labelled(4, words(check.status()), LABEL, check.found() + after);
    if (check.status() == Status.PASSED) {
      return;
    }
    page.labelled(4, "how", LABEL, check.how());
    if (!check.limits().isEmpty()) {
      String limits =
          check.limits().stream().map(LimitInForce::inWords).collect(Collectors.joining("; "));
      page.labelled(4, "limit", LABEL, limits);
    }
    if (check.status() == Status.FAILED) {
      page.labelled(4, "consequence", LABEL, check.consequence());
      page.labelled(4, "remedy", LABEL, check.remedy());
    }
  }

  private static String words(Status status) {
    return switch (status) {
      case PASSED -> "passed";
      case FAILED -> "FAILED";
      case NOT_RECORDED -> "open";
    };
  }
}
