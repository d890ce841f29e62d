package org.brakerules.harness.reference;

import java.util.List;
import java.util.stream.Collectors;
import org.brakerules.limit.Limit;
import org.brakerules.model.reading.Method;
import org.brakerules.model.reading.Moment;
import org.brakerules.model.reading.Station;

/** The rows of one limit, with all that they say. */
final class LimitTable {

  private LimitTable() {}

  static MarkdownTable of(List<Limit> rows, Links links) {
    MarkdownTable table =
        new MarkdownTable(
            "Passes",
            "Station",
            "Method",
            "Moment",
            "Applies to",
            "Rule set",
            "Holds",
            "Source",
            "Note");
    for (Limit limit : rows) {
      table.row(
          limit.inWords(),
          limit.station().map(Station::inWords).orElse("the part's own"),
          methods(limit),
          limit.moment().map(Moment::inWords).orElse("any"),
          limit.appliesTo().isEmpty() ? "all" : "`" + limit.appliesTo() + "`",
          limit.ruleSet().map(one -> "`" + one + "`").orElse("any"),
          dates(limit),
          links.clause(limit.source()),
          limit.note());
    }
    return table;
  }

  private static String methods(Limit limit) {
    return limit.methods().isEmpty()
        ? "any"
        : limit.methods().stream().map(Method::inWords).collect(Collectors.joining(" or "));
  }

  private static String dates(Limit limit) {
    String from = limit.from().map(day -> "from " + day).orElse("");
    String to = limit.to().map(day -> " to " + day).orElse("");
    return (from + to).isEmpty() ? "always" : (from + to).strip();
  }
}
