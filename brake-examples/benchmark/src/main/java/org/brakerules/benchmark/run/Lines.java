package org.brakerules.benchmark.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakerules.benchmark.result.Measured;
import org.brakerules.benchmark.result.Section;
import org.brakerules.benchmark.result.Section.Line;

/** Lines of a section; what was not measured has none. */
final class Lines {

  private final List<Line> all = new ArrayList<>();

  void add(String what, Optional<Measured> measured, String unit) {
    measured.ifPresent(value -> all.add(new Line(what, value, unit)));
  }

  void count(String what, double value, String unit) {
    all.add(new Line(what, Measured.counted(value), unit));
  }

  /** The section of these lines. */
  Section under(String title, String note) {
    return new Section(title, note, all);
  }
}
