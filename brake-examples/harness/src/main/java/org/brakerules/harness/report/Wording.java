package org.brakerules.harness.report;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.brakerules.model.decision.LimitInForce;
import org.brakerules.model.decision.Source;
import org.brakerules.model.decision.Standing;
import org.brakerules.model.part.Place;
import org.brakerules.model.reading.Station;

/** Names of parts, sources and limits as a technician says them. */
public final class Wording {

  private Wording() {}

  /** One part of a wheel end, such as {@code camshaft bushing, head end}. */
  public static String part(Place place) {
    return parts(List.of(place));
  }

  /** Parts of one kind, such as {@code camshaft bushing, head end and spline end}. */
  public static String parts(List<Place> places) {
    String kind = places.get(0).kind().inWords();
    List<String> where =
        places.stream().map(Wording::where).filter(text -> !text.isEmpty()).toList();
    return where.isEmpty() ? kind : kind + ", " + String.join(" and ", where);
  }

  private static String where(Place place) {
    String station = place.station() == Station.WHOLE_PART ? "" : place.station().inWords();
    String number = place.number() == 1 ? "" : "number " + place.number();
    return Stream.of(station, number)
        .filter(one -> !one.isEmpty())
        .collect(Collectors.joining(" "));
  }

  /** Where a rule or limit comes from, with how far it can be relied on. */
  public static String source(Source source) {
    if (!isNamed(source)) {
      return source.standing().inWords();
    }
    String name = source.standing() == Standing.MAKER ? source.title() : source.id();
    String clause = source.clause().isEmpty() ? "" : ", " + source.clause();
    return name + clause + " (" + source.standing().inWords() + ")";
  }

  /** Whether there is something to look up. */
  static boolean isNamed(Source source) {
    return source.standing() != Standing.COMMON_PRACTICE && source.standing() != Standing.MEMORY;
  }

  /** Where a rule comes from, if it rests on several sources. */
  static String sources(List<Source> sources) {
    return sources.stream().map(Wording::source).collect(Collectors.joining("; "));
  }

  /** A limit with its source. */
  public static String limit(LimitInForce limit) {
    return limit.inWords() + ", " + source(limit.source());
  }
}
