package org.brakerules.internal.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.brakerules.model.layout.AxleKind;
import org.brakerules.model.layout.ChamberSize;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.part.Condition;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.part.Presence;
import org.brakerules.model.quantity.Quantities;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.quantity.QuantityFormatException;
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

  /** The whole cell of a row that is for what no other row of its limit is for. */
  private static final String OTHERWISE = "otherwise";

  private static final String NOT = "not ";
  private static final String CHAMBER = "chamber.";

  /**
   * One demand of a selector.
   *
   * @param attribute what it looks at
   * @param ofPart whether a part meets it
   */
  private record Term(String attribute, Function<Subject, Fit> ofPart) {

    Fit fit(Subject subject) {
      return ofPart.apply(subject);
    }
  }

  /**
   * Something of a part that a term can ask for.
   *
   * @param parse one value as the table writes it; empty if it can never be one
   * @param example what can be written instead
   * @param demand whether a part meets a term that takes such values
   */
  private record Attribute(
      Function<String, Optional<? extends Object>> parse,
      String example,
      Function<Predicate<Object>, Function<Subject, Fit>> demand) {

    /** Of values without end, empty if none is stated. */
    static Attribute value(
        Function<String, Optional<? extends Object>> parse,
        String example,
        Function<Subject, Optional<? extends Object>> read) {
      return new Attribute(parse, example, taken -> subject -> fitOf(read.apply(subject), taken));
    }

    /** Of a closed list of states: what each means for a row is settled when the row is read. */
    static Attribute state(Class<?> type, Function<Subject, Object> read) {
      List<String> states = Names.ofAll(type);
      return new Attribute(
          name -> Optional.of(name).filter(states::contains),
          String.join(", ", states),
          taken -> {
            Map<Object, Fit> fits = fitOfEach(type, taken);
            return subject -> Objects.requireNonNull(fits.get(read.apply(subject)));
          });
    }

    private static Map<Object, Fit> fitOfEach(Class<?> type, Predicate<Object> taken) {
      Map<Object, Fit> fits = new HashMap<>();
      for (Object state : type.getEnumConstants()) {
        fits.put(state, fitOf(Names.stated((Enum<?>) state), taken));
      }
      return fits;
    }

    private static Fit fitOf(Optional<?> stated, Predicate<Object> taken) {
      if (stated.isEmpty()) {
        return Fit.UNKNOWN;
      }
      return taken.test(stated.get()) ? Fit.YES : Fit.NO;
    }
  }

  private final Term[] terms;
  private final boolean otherwise;

  private Selector(List<Term> terms, boolean otherwise) {
    this.terms = terms.toArray(Term[]::new);
    this.otherwise = otherwise;
  }

  /**
   * Reads the selector of a row.
   *
   * @param kind the kind of part whose properties it may ask for
   * @throws RuleBaseException if the cell selects nothing that is known
   */
  public static Selector parse(Row row, String column, PartKind kind) {
    if (row.text(column).equals(OTHERWISE)) {
      return new Selector(List.of(), true);
    }
    List<Term> terms = new ArrayList<>();
    for (String text : row.list(column)) {
      String[] sides = text.split("=", -1);
      if (sides.length != 2) {
        throw row.mistake("\"" + text + "\" selects nothing; write layout.camshaft=tube|split");
      }
      terms.add(term(row, kind, sides[0].strip(), sides[1].strip()));
    }
    return new Selector(terms, false);
  }

  /** Whether the row is for what no other row of its limit is for. */
  public boolean isOtherwise() {
    return otherwise;
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
    List<String> unstated = List.of();
    for (Term term : terms) {
      if (term.fit(subject) == Fit.UNKNOWN) {
        unstated = unstated.isEmpty() ? new ArrayList<>() : unstated;
        unstated.add(term.attribute());
      }
    }
    return unstated;
  }

  private static Term term(Row row, PartKind kind, String attribute, String written) {
    boolean negated = written.startsWith(NOT);
    String list = negated ? written.substring(NOT.length()) : written;
    Attribute found = attribute(row, kind, attribute);
    List<?> values =
        Arrays.stream(list.split("\\|"))
            .map(String::strip)
            .map(value -> value(row, attribute, found, value))
            .toList();
    return new Term(attribute, found.demand().apply(value -> values.contains(value) != negated));
  }

  private static Object value(Row row, String attribute, Attribute found, String written) {
    return found
        .parse()
        .apply(written)
        .orElseThrow(
            () ->
                row.mistake(
                    "\""
                        + written
                        + "\" is no value of "
                        + attribute
                        + "; write "
                        + found.example()));
  }

  private static Attribute attribute(Row row, PartKind kind, String name) {
    return switch (name) {
      case "axle.kind" -> Attribute.state(AxleKind.class, Subject::axleKind);
      case "part.condition" ->
          Attribute.state(Condition.class, subject -> subject.part().condition());
      case "part.presence" -> Attribute.state(Presence.class, subject -> subject.part().presence());
      case "part.station" -> Attribute.state(Station.class, subject -> subject.part().station());
      default ->
          name.startsWith("layout.")
              ? layout(row, name.substring("layout.".length()))
              : part(row, kind, name);
    };
  }

  private static Attribute layout(Row row, String name) {
    return name.startsWith(CHAMBER)
        ? of(row, ChamberSize.class, name.substring(CHAMBER.length()), Layout::chamber)
        : of(row, Layout.class, name, layout -> layout);
  }

  private static Attribute of(
      Row row, Class<?> type, String name, Function<Layout, Object> holder) {
    Property property =
        row.known(
            name,
            type == Layout.class ? "property of a layout" : "property of a chamber",
            one -> Property.of(type, one).filter(found -> !found.isRecord()),
            Property.names(type));
    Function<Subject, Object> value = subject -> property.valueOf(holder.apply(subject.layout()));
    if (property.isState()) {
      return Attribute.state(property.type(), value);
    }
    if (property.isText()) {
      return Attribute.value(
          Optional::of,
          "a text",
          subject -> Optional.of((String) value.apply(subject)).filter(text -> !text.isEmpty()));
    }
    return Attribute.value(
        Selector::quantity, "a value with its unit", subject -> (Optional<?>) value.apply(subject));
  }

  private static Optional<Quantity<?>> quantity(String written) {
    try {
      return Optional.of(Quantities.parse(written));
    } catch (QuantityFormatException e) {
      return Optional.empty();
    }
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
    return Attribute.state(property.type(), subject -> property.valueOf(subject.part()));
  }
}
