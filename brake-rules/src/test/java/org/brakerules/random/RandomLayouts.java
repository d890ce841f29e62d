package org.brakerules.random;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.brakerules.internal.table.Tables;
import org.brakerules.model.layout.ChamberFamily;
import org.brakerules.model.layout.ChamberSize;
import org.brakerules.model.layout.Layout;
import org.brakerules.model.layout.StrokeClass;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.LengthUnit;

/** Random layouts, with chambers and drums mostly of the sizes that the limit tables know. */
final class RandomLayouts {

  private static final String CHAMBER = "layout.chamber.";

  /** The cells of the limit tables that say which configuration a row is for. */
  private static final List<String> SELECTORS =
      Tables.load().limits().rows().map(row -> row.limit().appliesTo()).distinct().toList();

  private static final List<String> CHAMBERS =
      SELECTORS.stream().filter(one -> one.contains(CHAMBER)).toList();
  private static final List<String> FAMILIES = named(SELECTORS, CHAMBER + "family");
  private static final List<String> TYPES = with(named(SELECTORS, CHAMBER + "type"), "7");
  private static final List<String> RATED =
      with(named(SELECTORS, CHAMBER + "ratedStroke"), "2.25 in", "2.5 in", "64 mm");
  private static final List<String> SPRING_TYPES =
      with(named(SELECTORS, CHAMBER + "springType"), "", "7");
  private static final List<String> DRUMS =
      with(named(SELECTORS, "layout.drumDiameter"), "16.5 in", "17 in");

  private final Dice dice;
  private final Mood mood;
  private final Aim aim;

  RandomLayouts(Dice dice, Mood mood, Aim aim) {
    this.dice = dice;
    this.mood = mood;
    this.aim = aim;
  }

  Layout layout() {
    return Records.build(Layout.class, this::valueOf);
  }

  private Object valueOf(RecordComponent component) {
    Class<?> type = component.getType();
    if (type == ChamberSize.class) {
      return dice.percent(mood.stated) ? chamber() : ChamberSize.UNKNOWN;
    }
    return type == Optional.class
        ? length(DRUMS)
        : aim.ofBrake(component.getName(), type, dice).orElseGet(() -> dice.state(type, mood));
  }

  /** The size of one row of a limit table; what the row does not ask for is anything. */
  private ChamberSize chamber() {
    List<String> row = List.of(dice.percent(80) ? dice.any(CHAMBERS) : "");
    return new ChamberSize(
        constant(ChamberFamily.class, dice.any(named(row, CHAMBER + "family", FAMILIES))),
        dice.any(named(row, CHAMBER + "type", TYPES)),
        named(row, CHAMBER + "strokeClass").stream()
            .findFirst()
            .map(name -> constant(StrokeClass.class, name))
            .orElseGet(() -> dice.any(StrokeClass.class)),
        length(dice.percent(70) ? named(row, CHAMBER + "ratedStroke", RATED) : RATED),
        dice.any(named(row, CHAMBER + "springType", SPRING_TYPES)));
  }

  private Optional<Length> length(List<String> sizes) {
    Length size = Length.parse(dice.any(sizes));
    LengthUnit unit = dice.percent(80) ? size.unit() : LengthUnit.MILLIMETRE;
    return dice.percent(mood.stated)
        ? Optional.of(new Length(size.nanometres(), unit))
        : Optional.empty();
  }

  private static List<String> named(
      List<String> selectors, String attribute, List<String> otherwise) {
    List<String> named = named(selectors, attribute);
    return named.isEmpty() ? otherwise : named;
  }

  /** Every value that selectors name for an attribute, those they refuse among them. */
  private static List<String> named(List<String> selectors, String attribute) {
    return selectors.stream()
        .flatMap(selector -> Arrays.stream(selector.split(";")))
        .map(term -> term.strip().split("="))
        .filter(sides -> sides[0].strip().equals(attribute))
        .map(sides -> sides[1].strip())
        .map(values -> values.startsWith("not ") ? values.substring("not ".length()) : values)
        .flatMap(values -> Arrays.stream(values.split("\\|")))
        .map(String::strip)
        .distinct()
        .toList();
  }

  private static List<String> with(List<String> values, String... more) {
    return Stream.concat(values.stream(), Arrays.stream(more)).toList();
  }

  private static <E extends Enum<E>> E constant(Class<E> type, String name) {
    return Enum.valueOf(type, name.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
