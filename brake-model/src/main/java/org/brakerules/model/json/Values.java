package org.brakerules.model.json;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.brakerules.model.quantity.Quantities;
import org.brakerules.model.quantity.Quantity;
import org.brakerules.model.quantity.QuantityFormatException;
import org.brakerules.model.text.NearestName;

/** Reads single values. A value that is not what was expected is noted and comes out empty. */
final class Values {

  static final int MOST_TEXT_CHARACTERS = 200;
  static final String DATE = "a date from 1900 to 2199, such as \"2026-11-20\"";

  private static final String NOT_NEGATIVE =
      "a value that is not negative; write what the instrument showed";
  private static final Pattern DATE_TEXT =
      Pattern.compile("(?:19|20|21)[0-9]{2}-[0-9]{2}-[0-9]{2}");
  private static final Pattern WHOLE_NUMBER = Pattern.compile("0|[1-9][0-9]{0,8}");

  private final Problems problems;

  Values(Problems problems) {
    this.problems = problems;
  }

  Problems problems() {
    return problems;
  }

  /** A text of one line that is not blank. */
  Optional<String> text(Node node) {
    if (node instanceof Node.Text text && isOneLine(text.value())) {
      return Optional.of(text.value());
    }
    problems.add(node, "one line of text, 1 to " + MOST_TEXT_CHARACTERS + " characters");
    return Optional.empty();
  }

  private static boolean isOneLine(String text) {
    return !text.isBlank()
        && text.codePointCount(0, text.length()) <= MOST_TEXT_CHARACTERS
        && Shown.isVisible(text);
  }

  /** A text of a given form. */
  Optional<String> text(Node node, Pattern form, String expected) {
    if (node instanceof Node.Text text && form.matcher(text.value()).matches()) {
      return Optional.of(text.value());
    }
    problems.add(node, expected);
    return Optional.empty();
  }

  /** A date in the form 2026-11-20. */
  Optional<LocalDate> date(Node node) {
    return text(node, DATE_TEXT, DATE).flatMap(text -> date(node, text));
  }

  private Optional<LocalDate> date(Node node, String text) {
    try {
      // Its form is known. The parser for all forms of dates takes longer to set up than a job to
      // read.
      return Optional.of(
          LocalDate.of(
              Integer.parseInt(text.substring(0, 4)),
              Integer.parseInt(text.substring(5, 7)),
              Integer.parseInt(text.substring(8))));
    } catch (DateTimeException noSuchDay) {
      problems.add(node, "a day that the calendar has");
      return Optional.empty();
    }
  }

  /** A whole number from 1 to the largest. */
  Optional<Integer> count(Node node, int largest) {
    if (node instanceof Node.Digits digits && WHOLE_NUMBER.matcher(digits.written()).matches()) {
      int number = Integer.parseInt(digits.written());
      if (number >= 1 && number <= largest) {
        return Optional.of(number);
      }
    }
    problems.add(node, "a whole number from 1 to " + largest + ", without quotes");
    return Optional.empty();
  }

  /** A constant by its name. */
  <E extends Enum<E>> Optional<E> choice(Node node, Names<E> names) {
    Optional<E> constant =
        node instanceof Node.Text text ? names.constant(text.value()) : Optional.empty();
    if (constant.isEmpty()) {
      problems.add(node, named(node, names.all()));
    }
    return constant;
  }

  private static String named(Node node, List<String> names) {
    Optional<String> near =
        node instanceof Node.Text text ? NearestName.of(text.value(), names) : Optional.empty();
    return near.map(name -> Shown.quoted(name) + ", the nearest known name")
        .orElseGet(() -> Shown.oneOf(names));
  }

  /** A quantity of one kind that is not negative and not larger than any brake has. */
  <Q extends Quantity<Q>> Optional<Q> quantity(Node node, Class<Q> type, Optional<Q> atMost) {
    Optional<Q> quantity = quantity(node, text -> Quantities.parse(type, text));
    if (quantity.isPresent() && atMost.isPresent() && quantity.get().compareTo(atMost.get()) > 0) {
      problems.add(
          node.spot(),
          node.shown() + " (more than any brake has)",
          "at most " + atMost.get() + "; check the decimal point and the unit");
      return Optional.empty();
    }
    return quantity;
  }

  /** A quantity of any kind that is not negative. */
  Optional<Quantity<?>> quantity(Node node) {
    return quantity(node, Quantities::parse);
  }

  private <T extends Quantity<?>> Optional<T> quantity(Node node, Function<String, T> parser) {
    String written = written(node);
    try {
      // A number alone is refused as well, since it has no unit; the refusal says how to write it.
      T quantity = parser.apply(written);
      if (!quantity.isNegative()) {
        return Optional.of(quantity);
      }
      problems.add(node, NOT_NEGATIVE);
    } catch (QuantityFormatException refused) {
      String asText = node instanceof Node.Text ? "" : "a text: ";
      String wrong = written.isEmpty() ? "" : " (" + refused.wrong() + ")";
      String expected = written.startsWith("-") ? NOT_NEGATIVE : asText + refused.expected();
      problems.add(node.spot(), node.shown() + wrong, expected);
    }
    return Optional.empty();
  }

  private static String written(Node node) {
    if (node instanceof Node.Text text) {
      return text.value();
    }
    return node instanceof Node.Digits digits ? digits.written() : "";
  }
}
