package org.brakerules.harness.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.decision.Needed;
import org.brakerules.model.decision.Needed.Task;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Station;

/** What is still to be looked at or measured, as an entry to tick off. */
public final class NeededInWords {

  private static final String BOX = "[ ] ";

  private NeededInWords() {}

  static void write(Needed needed, int indent, Page page) {
    page.labelled(
        indent,
        BOX,
        BOX.length(),
        task(needed.task(), needed.point()) + " " + needed.what() + " (" + needed.why() + ")");
    page.paragraph(
        indent + BOX.length(),
        doing(where(needed), needed.instrument(), needed.methods(), needed.how()));
    needed.limits().forEach(limit -> limit(limit, indent + BOX.length(), page));
  }

  /** What there is to do, as the beginning of a sentence. */
  public static String task(Task task, String point) {
    return switch (task) {
      case LOOK -> "Look for:";
      case MEASURE -> "Measure:";
      case STATE -> point.contains(".layout.") ? "State of the layout:" : "State:";
    };
  }

  /** Where, if it is not the part's own station, with what and how to look or measure. */
  public static String doing(
      Optional<Station> station, String instrument, List<Method> methods, String how) {
    String where = station.map(one -> "At the " + one.inWords() + ". ").orElse("");
    String with = instrument.isEmpty() ? "" : "With: " + instrument + ". ";
    String accepted =
        methods.isEmpty()
            ? ""
            : methods.stream()
                .map(Method::inWords)
                .collect(Collectors.joining(" or ", " Counts as: ", "."));
    return where + with + how + accepted;
  }

  private static Optional<Station> where(Needed needed) {
    return Optional.of(needed.station()).filter(one -> one != needed.part().station());
  }

  private static void limit(LimitInForce limit, int indent, Page page) {
    page.paragraph(indent, "Limit it will meet: " + Wording.limit(limit) + ".");
  }
}
