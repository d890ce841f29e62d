package org.brakerules.model.json;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.brakerules.model.job.MakersLimit;
import org.brakerules.model.quantity.Quantity;

/** Reads the limits of the maker. */
final class MakersLimitReader {

  static final Pattern LIMIT_ID =
      Pattern.compile("[a-z][a-z0-9-]{0,60}(?:\\.[a-z0-9-]{1,60}){1,4}");

  private static final String LIMIT =
      "the id of the limit it replaces, such as \"camshaft-bushing.radial-play.max\"";

  private final WheelEndNames wheelEnds;
  private final Values values;
  private final Once<List<String>> once;

  MakersLimitReader(WheelEndNames wheelEnds, Values values) {
    this.wheelEnds = wheelEnds;
    this.values = values;
    this.once = new Once<>(values.problems());
  }

  /** Reads the limits of the job; those with a problem are left out. */
  List<MakersLimit> limits(Optional<Node> field) {
    Entries entries =
        new Entries(
            "an array of limits",
            "a limit: an object with limit, value and document",
            values.problems());
    return entries.each(entries.of(field), this::limit);
  }

  private Supplier<MakersLimit> limit(Node node, Fields fields) {
    Optional<String> limit =
        fields.required("limit", LIMIT).flatMap(it -> values.text(it, LIMIT_ID, LIMIT));
    String on = fields.optional("on").flatMap(it -> wheelEnds.path(it, values)).orElse("");
    limit.ifPresent(
        it -> once.add(List.of(it, on), node, it, "one limit of this id for the same parts"));
    Optional<Quantity<?>> value =
        fields.required("value", "the limit with its unit").flatMap(values::quantity);
    Optional<String> document =
        fields
            .required("document", "where it is written, such as \"cast on the drum\"")
            .flatMap(values::text);
    String page = fields.optional("page").flatMap(values::text).orElse("");
    return () ->
        new MakersLimit(limit.orElseThrow(), on, value.orElseThrow(), document.orElseThrow(), page);
  }
}
