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

  private static final int INDENT = 2;
  private static final int NUMBER = 8;

  private NeededInWords() {}

  /** One look of an ordered list, with the other parts that wait for it; empty if none does. */
  static void write(Needed needed, int number, String bearsOn, Page page) {
    page.labelled(
        INDENT,
        "%2d. [ ] ".formatted(number),
        NUMBER,
        Wording.part(needed.part())
            + ": "
            + task(needed.task(), needed.point())
            + " "
            + needed.what()
            + " ("
            + needed.why()
            + ")");
    page.paragraph(
        INDENT + NUMBER,
        doing(
            where(needed),
            needed.instrument(),
            needed.methods(),
            needed.conditions(),
            needed.how()));
    needed.limits().forEach(limit -> limit(limit, INDENT + NUMBER, page));
    if (!bearsOn.isEmpty()) {
      page.paragraph(INDENT + NUMBER, "Bears on: " + bearsOn + ".");
    }
  }

  /** What there is to do, as a verb before what it is done to. */
  public static String task(Task task, String point) {
    return switch (task) {
      case LOOK -> "look for";
      case MEASURE -> "measure";
      case STATE -> point.contains(".layout.") ? "state of the layout" : "state";
    };
  }

  /** Where, if it is not the part's own station, with what and how to look or measure. */
  public static String doing(
      Optional<Station> station,
      String instrument,
      List<Method> methods,
      List<String> conditions,
      String how) {
    String where = station.map(one -> "At the " + one.inWords() + ". ").orElse("");
    String with = instrument.isEmpty() ? "" : "With: " + instrument + ". ";
    String accepted =
        methods.isEmpty()
            ? ""
            : methods.stream()
                .map(Method::inWords)
                .collect(
                    Collectors.joining(" or ", " Counts as: ", conditions.isEmpty() ? "." : ", "));
    String under = conditions.isEmpty() ? "" : String.join("; ", conditions) + ".";
    return where + with + how + accepted + under;
  }

  private static Optional<Station> where(Needed needed) {
    return Optional.of(needed.station()).filter(one -> one != needed.part().station());
  }

  private static void limit(LimitInForce limit, int indent, Page page) {
    page.paragraph(indent, "Limit it will meet: " + Wording.limit(limit) + ".");
  }
}
