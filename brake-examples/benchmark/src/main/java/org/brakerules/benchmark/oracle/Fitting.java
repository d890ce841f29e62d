package org.brakerules.benchmark.oracle;

import java.util.List;
import org.brakerules.model.job.BrakeJob;
import org.jspecify.annotations.Nullable;

/**
 * Which row of a limit is for a part.
 *
 * @param row the row; null if none is for certain
 * @param hangs whether something unstated might make another row the one, or its value known
 * @param isLawOpen whether that other row is a law of the job's rule set
 */
record Fitting(@Nullable Figure row, boolean hangs, boolean isLawOpen) {

  static Fitting of(List<Figure> rows, BrakeJob job, Facts part) {
    Figure sure = null;
    Figure otherwise = null;
    boolean hangs = false;
    boolean lawOpen = false;
    for (Figure row : rows) {
      Fit fit = row.isOtherwise() ? Fit.NO : row.which().fit(part);
      if (row.isOtherwise()) {
        otherwise = otherwise == null ? row : otherwise;
      } else if (fit == Fit.YES) {
        sure = sure == null ? row : sure;
      } else if (fit == Fit.UNSTATED) {
        hangs = true;
        lawOpen |= row.isLawOf(job);
      }
    }
    return sure != null || hangs || otherwise == null
        ? new Fitting(sure, hangs, lawOpen)
        : ofTheRest(otherwise, job, part);
  }

  private static Fitting ofTheRest(Figure row, BrakeJob job, Facts part) {
    boolean hangs = row.ofRatedStroke() && row.value(part.end()).isEmpty();
    return new Fitting(row, hangs, hangs && row.isLawOf(job));
  }
}
