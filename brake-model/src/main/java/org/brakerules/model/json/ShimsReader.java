package org.brakerules.model.json;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.brakerules.model.job.ShimsAtHand;
import org.brakerules.model.part.Condition;
import org.brakerules.model.quantity.Length;

/** Reads the shims at hand. */
final class ShimsReader {

  private static final Names<Condition> CONDITIONS = Names.of(Condition.class);
  private static final Optional<Length> THICKEST = Optional.of(Length.parse("0.5 in"));

  private final Values values;

  ShimsReader(Values values) {
    this.values = values;
  }

  /** Reads all of them; those with a problem are left out. */
  List<ShimsAtHand> shims(Optional<Node> field) {
    Entries entries =
        new Entries(
            "an array of shims",
            "shims of one thickness: an object with thickness, count and condition",
            values.problems());
    return entries.each(entries.of(field), this::shims);
  }

  private Supplier<ShimsAtHand> shims(Node node, Fields fields) {
    Optional<Length> thickness =
        fields
            .required("thickness", "the thickness of each with its unit")
            .flatMap(this::thickness);
    Optional<Integer> count =
        fields
            .required("count", "how many there are")
            .flatMap(it -> values.count(it, ShimsAtHand.MOST));
    Optional<Condition> condition =
        fields
            .required("condition", "one of " + String.join(", ", CONDITIONS.all()))
            .flatMap(it -> values.choice(it, CONDITIONS));
    return () ->
        new ShimsAtHand(thickness.orElseThrow(), count.orElseThrow(), condition.orElseThrow());
  }

  private Optional<Length> thickness(Node node) {
    Optional<Length> thickness = values.quantity(node, Length.class, THICKEST);
    if (thickness.isPresent() && thickness.get().nanometres() == 0) {
      values.problems().add(node.spot(), "a shim of " + thickness.get(), "a thickness above zero");
    }
    return thickness;
  }
}
