package org.brakerules.harness.batch;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.brakerules.harness.Counted;
import org.brakerules.harness.batch.Summary.Frequent;
import org.brakerules.harness.batch.Tally.Count;
import org.brakerules.model.decision.Disposition;
import org.brakerules.model.part.PartKind;

/** What a batch came to, to be read on a terminal. */
final class SummaryText {

  private static final String ROW = "  %-22s %10s %10s %10s %10s %10s %10s\n";

  private final Summary summary;
  private final Tally tally;
  private final StringBuilder text = new StringBuilder();

  private SummaryText(Summary summary) {
    this.summary = summary;
    this.tally = summary.tally();
  }

  static String of(Summary summary) {
    return new SummaryText(summary).text();
  }

  private String text() {
    jobs();
    rejects();
    if (tally.parts().total() > 0) {
      parts();
      reasons();
    }
    return text.toString();
  }

  private void jobs() {
    line(
        "%s decided: %d with every part decided, %d with a hold",
        Counted.of(tally.count(Count.JOBS), "job"),
        tally.count(Count.COMPLETE),
        tally.count(Count.ON_HOLD));
  }

  private void rejects() {
    if (tally.rejects() > 0) {
      line(
          "%s rejected: %d blank, %d no job, %d refused by the rule base, %d by a mistake of this"
              + " program",
          Counted.of(tally.rejects(), "line"),
          tally.count(Reject.Kind.BLANK),
          tally.count(Reject.Kind.INVALID),
          tally.count(Reject.Kind.REFUSED),
          tally.count(Reject.Kind.FAILURE));
    }
  }

  private void parts() {
    line("");
    line(
        "%s, %s %% undecided",
        Counted.of(tally.parts().total(), "part"), summary.undecidedPercent());
    row("", List.of("reuse", "clean", "adjust", "undecided", "replace", "hold"));
    for (Map.Entry<PartKind, KindCount> kind : tally.kinds().entrySet()) {
      row(kind.getKey().inWords(), kind.getValue());
    }
    row("all", tally.parts());
  }

  private void row(String name, KindCount count) {
    row(
        name,
        List.of(
            count.count(Disposition.REUSE),
            count.count(Disposition.CLEAN),
            count.count(Disposition.ADJUST),
            count.count(Disposition.UNDECIDED),
            count.count(Disposition.REPLACE),
            count.holds()));
  }

  private void row(String name, List<?> cells) {
    text.append(
        ROW.formatted(
            name,
            cells.get(0),
            cells.get(1),
            cells.get(2),
            cells.get(3),
            cells.get(4),
            cells.get(5)));
  }

  private void reasons() {
    line("");
    line("Most frequent reasons for anything but reuse, by parts");
    for (Frequent reason : summary.reasons()) {
      line("  %10d  %-24s %s", reason.parts(), reason.rule(), reason.title());
    }
  }

  private void line(String format, Object... values) {
    text.append(String.format(Locale.ROOT, format, values)).append('\n');
  }
}
