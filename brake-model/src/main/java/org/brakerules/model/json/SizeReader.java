package org.brakerules.model.json;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.brakerules.model.job.Size;
import org.brakerules.model.job.StatedSize;
import org.brakerules.model.quantity.Length;

/** Reads the sizes stated for the figures. */
final class SizeReader {

  private static final Names<Size> SIZES = Names.of(Size.class);
  private static final Optional<Length> LARGEST = Optional.of(Length.parse("40 in"));

  private final WheelEndNames wheelEnds;
  private final Values values;
  private final Once<List<String>> once;

  SizeReader(WheelEndNames wheelEnds, Values values) {
    this.wheelEnds = wheelEnds;
    this.values = values;
    this.once = new Once<>(values.problems());
  }

  /** Reads all of them; those with a problem are left out. */
  List<StatedSize> sizes(Optional<Node> field) {
    Entries entries =
        new Entries(
            "an array of sizes", "a size: an object with size and value", values.problems());
    return entries.each(entries.of(field), this::size);
  }

  private Supplier<StatedSize> size(Node node, Fields fields) {
    Optional<Size> size =
        fields
            .required("size", "which size: " + Shown.oneOf(SIZES.all()))
            .flatMap(it -> values.choice(it, SIZES));
    String on = fields.optional("on").flatMap(it -> wheelEnds.path(it, values)).orElse("");
    size.ifPresent(
        it ->
            once.add(
                List.of(it.name(), on),
                node,
                Names.of(it),
                "one size of this name for the same parts"));
    Optional<Length> value =
        fields.required("value", "the size with its unit").flatMap(it -> value(it, size));
    return () -> new StatedSize(size.orElseThrow(), on, value.orElseThrow());
  }

  /** There may be no play, but there is no part of no size. */
  private Optional<Length> value(Node node, Optional<Size> size) {
    Optional<Length> value = values.quantity(node, Length.class, LARGEST);
    boolean mayBeNothing = size.map(it -> it.name().startsWith("PLAY_")).orElse(true);
    if (!mayBeNothing && value.filter(it -> it.nanometres() == 0).isPresent()) {
      values.problems().add(node.spot(), "a size of " + value.get(), "a size above zero");
    }
    return value;
  }
}
