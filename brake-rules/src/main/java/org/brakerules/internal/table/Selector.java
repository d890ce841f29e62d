package org.brakerules.internal.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Presence;
import org.brakerules.model.reading.Station;

/**
 * Which parts a row is for, such as {@code layout.camshaft=tube|split; part.condition=new}. What is
 * not stated of a part neither fits nor fails.
 */
public final class Selector {

  /** Whether a row is for a part. */
  public enum Fit {
    YES,
    NO,
    /** Depends on something that is not stated. */
    UNKNOWN
  }

  private record Term(String attribute, List<String> values, Function<Subject, Enum<?>> read) {

    Fit fit(Subject subject) {
      String value = Names.of(read.apply(subject));
      if (values.contains(value)) {
        return Fit.YES;
      }
      return value.equals("unknown") ? Fit.UNKNOWN : Fit.NO;
    }
  }

  private final List<Term> terms;

  private Selector(List<Term> terms) {
    this.terms = List.copyOf(terms);
  }

  static Selector parse(Row row, String column, PartKind kind) {
    List<Term> terms = new ArrayList<>();
    for (String text : row.list(column)) {
      String[] sides = text.split("=", -1);
      if (sides.length != 2) {
        throw row.mistake("\"" + text + "\" selects nothing; write layout.camshaft=tube|split");
      }
      terms.add(term(row, kind, sides[0].strip(), sides[1].strip()));
    }
    return new Selector(terms);
  }

  /** Whether the row is for this part. */
  public Fit fit(Subject subject) {
    Fit worst = Fit.YES;
    for (Term term : terms) {
      Fit fit = term.fit(subject);
      if (fit == Fit.NO) {
        return Fit.NO;
      }
      worst = fit == Fit.UNKNOWN ? fit : worst;
    }
    return worst;
  }

  /** What must be stated before it is known whether the row is for this part. */
  public List<String> unstated(Subject subject) {
    return terms.stream()
        .filter(term -> term.fit(subject) == Fit.UNKNOWN)
        .map(Term::attribute)
        .toList();
  }

  private static Term term(Row row, PartKind kind, String attribute, String written) {
    List<String> values = Arrays.stream(written.split("\\|")).map(String::strip).toList();
    Attribute found = attribute(row, kind, attribute);
    for (String value : values) {
      if (!found.states().contains(value)) {
        throw row.mistake(
            "\""
                + value
                + "\" is no value of "
                + attribute
                + "; write "
                + String.join(", ", found.states()));
      }
    }
    return new Term(attribute, values, found.read());
  }

  private record Attribute(List<String> states, Function<Subject, Enum<?>> read) {

    static <E extends Enum<E>> Attribute of(Class<E> type, Function<Subject, Enum<?>> read) {
      return new Attribute(Names.all(type), read);
    }
  }

  private static Attribute attribute(Row row, PartKind kind, String name) {
    return switch (name) {
      case "axle.kind" -> Attribute.of(AxleKind.class, Subject::axleKind);
      case "part.condition" -> Attribute.of(Condition.class, subject -> subject.part().condition());
      case "part.presence" -> Attribute.of(Presence.class, subject -> subject.part().presence());
      case "part.station" -> Attribute.of(Station.class, subject -> subject.part().station());
      default ->
          name.startsWith("layout.")
              ? layout(row, name.substring("layout.".length()))
              : part(row, kind, name);
    };
  }

  private static Attribute layout(Row row, String name) {
    Property property =
        row.known(
            name,
            "property of a layout",
            one -> Property.of(Layout.class, one).filter(Property::isState),
            Property.names(Layout.class));
    return new Attribute(
        property.states(), subject -> (Enum<?>) property.valueOf(subject.layout()));
  }

  private static Attribute part(Row row, PartKind kind, String name) {
    if (!name.startsWith("part.")) {
      throw row.mistake(
          "\"" + name + "\" is no attribute; write axle.kind, layout.…, or part.… with a property");
    }
    Property property =
        row.known(
            name.substring("part.".length()),
            "sign or state of a " + kind.inWords(),
            one -> Property.of(kind, one).filter(found -> !found.isMeasurement()),
            Property.names(kind.recordType()));
    return new Attribute(property.states(), subject -> (Enum<?>) property.valueOf(subject.part()));
  }
}
