package org.brakerules.linter.internal.check;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.Row;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.ModelProperty;
import org.brakerules.model.quantity.Angle;
import org.brakerules.model.quantity.AngleUnit;
import org.brakerules.model.quantity.Force;
import org.brakerules.model.quantity.ForceUnit;
import org.brakerules.model.quantity.Length;
import org.brakerules.model.quantity.LengthUnit;
import org.brakerules.model.quantity.Pressure;
import org.brakerules.model.quantity.PressureUnit;
import org.brakerules.model.quantity.Quantities;
import org.brakerules.model.quantity.QuantityFormatException;
import org.brakerules.model.quantity.Share;
import org.brakerules.model.quantity.ShareUnit;
import org.brakerules.model.quantity.Torque;
import org.brakerules.model.quantity.TorqueUnit;
import org.brakerules.model.quantity.Unit;

/** The value of a limit is a number with a unit in which its property is measured. */
final class TableValueCheck implements Check {

  private static final String RATED_STROKE = "layout.chamber.ratedStroke";
  private static final Pattern SHARE = Pattern.compile("(.*) of (.*)");

  private static final List<? extends Unit<?>> SHARE_UNITS = List.of(ShareUnit.values());

  private static final Map<Class<?>, List<? extends Unit<?>>> UNITS =
      Map.of(
          Length.class, List.of(LengthUnit.values()),
          Angle.class, List.of(AngleUnit.values()),
          Torque.class, List.of(TorqueUnit.values()),
          Force.class, List.of(ForceUnit.values()),
          Pressure.class, List.of(PressureUnit.values()));

  @Override
  public void check(RuleBase base, Findings findings) {
    base.limits()
        .filter(row -> !row.text("value").isEmpty())
        .forEach(
            row ->
                TablePropertyCheck.measurement(row)
                    .flatMap(ModelProperty::quantity)
                    .ifPresent(wanted -> check(row, wanted, findings)));
  }

  private static void check(Row row, Class<?> wanted, Findings findings) {
    String value = row.text("value");
    Matcher share = SHARE.matcher(value);
    if (!share.matches()) {
      checkKind(row, value, wanted, findings);
    } else if (!share.group(2).equals(RATED_STROKE) || wanted != Length.class) {
      add(
          row,
          "\"" + value + "\" is a share of nothing that is known",
          "write a share of the rated stroke as the limit of a length, such as 80 % of "
              + RATED_STROKE,
          findings);
    } else {
      read(row, share.group(1), Share.class, "80 % of " + RATED_STROKE, findings);
    }
  }

  private static void checkKind(Row row, String value, Class<?> wanted, Findings findings) {
    read(row, value, wanted, example(wanted, value), findings)
        .filter(found -> found != wanted)
        .ifPresent(
            found ->
                add(
                    row,
                    "%s is %s, and %s is measured as %s, so no reading can be held against it"
                        .formatted(value, inWords(found), row.text("property"), inWords(wanted)),
                    "write " + inWords(wanted) + ", such as " + example(wanted, value),
                    findings));
  }

  private static Optional<Class<?>> read(
      Row row, String value, Class<?> wanted, String example, Findings findings) {
    try {
      return Optional.of(Quantities.parse(value).getClass());
    } catch (QuantityFormatException e) {
      add(
          row,
          "\"" + value + "\" is no value: " + e.wrong(),
          "write a number with the unit " + inWords(units(wanted)) + ", such as " + example,
          findings);
      return Optional.empty();
    }
  }

  private static List<String> units(Class<?> quantity) {
    return UNITS.getOrDefault(quantity, SHARE_UNITS).stream().<String>map(Unit::symbol).toList();
  }

  private static String inWords(List<String> units) {
    String last = units.get(units.size() - 1);
    return units.size() == 1
        ? last
        : String.join(", ", units.subList(0, units.size() - 1)) + " or " + last;
  }

  private static String inWords(Class<?> quantity) {
    String name = quantity.getSimpleName().toLowerCase(Locale.ROOT);
    return (name.equals("angle") ? "an " : "a ") + name;
  }

  /** The written number with a unit where that makes a value. */
  private static String example(Class<?> quantity, String written) {
    String unit = units(quantity).get(0);
    String number = written.split(" [^\\d]", 2)[0] + " " + unit;
    return isValue(number) ? number : "0.030 " + unit;
  }

  private static boolean isValue(String written) {
    try {
      Quantities.parse(written);
      return true;
    } catch (QuantityFormatException e) {
      return false;
    }
  }

  private static void add(Row row, String message, String remedy, Findings findings) {
    findings.add(LintKind.TABLE_VALUE, row.cell("value").spot(), message, remedy);
  }
}
