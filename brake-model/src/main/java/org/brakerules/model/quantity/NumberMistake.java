package org.brakerules.model.quantity;

import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * A way in which people and programs often write a number wrong, and what to write instead.
 *
 * @param shape the whole text, or the number in it, that shows the mistake
 */
record NumberMistake(
    Pattern shape, String wrong, Function<WrittenQuantity<?>, String> whatToWrite) {

  private static final int MOST_DIGITS = 12;

  private static final List<NumberMistake> IN_THE_TEXT =
      List.of(
          mistake("", "it is empty", written -> written.kind().described()),
          mistake(
              "[-+]?(?i:nan|inf|infinity|∞)(?![a-zA-Z]).*",
              "it is not a number",
              written ->
                  written.kind().described() + ", or say that the measurement was not taken"),
          mistake(
              "[-+]?[0-9.,]+ ?[eE] ?[-+]?[0-9].*",
              "powers of ten are not read",
              written -> "the number in full, such as \"" + written.kind().example() + "\""));

  private static final List<NumberMistake> IN_THE_NUMBER =
      List.of(
          mistake("", "the number is missing", written -> written.kind().described()),
          mistake(
              "[-+] ?[-+].*[0-9].*",
              "it has more than one sign",
              written ->
                  written.rewritten(unsigned(written))
                      + ", or for a difference "
                      + written.rewritten("-" + unsigned(written))),
          mistake(
              "\\+.*[0-9].*",
              "it has a plus sign",
              written -> written.rewritten(unsigned(written))),
          mistake(
              "-?[1-9][0-9]{0,2},[0-9]{3}",
              "its comma may be a decimal comma or separate thousands",
              written ->
                  written.rewritten(written.number().replace(",", ""))
                      + " or "
                      + written.rewritten(written.number().replace(',', '.'))),
          mistake(
              "-?[0-9]*,[0-9]+",
              "it has a decimal comma",
              written -> written.rewritten(written.number().replace(',', '.'))),
          mistake(
              ".*,.*",
              "it has a comma",
              written -> "a number without commas, such as \"" + written.kind().example() + "\""),
          mistake(
              "[0-9]+ ?- ?[0-9]+/[0-9]+",
              "it has a dash between whole number and fraction",
              written -> written.rewritten(written.number().replaceAll(" ?- ?", " "))),
          mistake(
              "[0-9./ ]+-[0-9./ ]+",
              "it is a range",
              written -> "one value, such as \"" + written.kind().example() + "\""),
          mistake(
              ".*/.*/.*",
              "it has more than one fraction line",
              written -> "one fraction, such as 3/4, or a decimal"),
          mistake(
              ".*\\..*\\..*",
              "it has more than one decimal point",
              written -> "one decimal point, as in \"0.030\""),
          mistake(
              "(?:[^0-9]*[0-9]){" + (MOST_DIGITS + 1) + ",}.*",
              "it has more than " + MOST_DIGITS + " digits",
              written -> "no more than " + MOST_DIGITS + " digits"));

  /** Refuses a text that shows one of the mistakes. */
  static void refuseAny(WrittenQuantity<?> written) {
    IN_THE_TEXT.forEach(mistake -> mistake.refuse(written.found(), written));
    IN_THE_NUMBER.forEach(mistake -> mistake.refuse(written.number(), written));
  }

  private static NumberMistake mistake(
      String shape, String wrong, Function<WrittenQuantity<?>, String> whatToWrite) {
    return new NumberMistake(Pattern.compile(shape), wrong, whatToWrite);
  }

  private static String unsigned(WrittenQuantity<?> written) {
    return written.number().replaceFirst("^[-+ ]+", "");
  }

  private void refuse(String text, WrittenQuantity<?> written) {
    if (shape.matcher(text).matches()) {
      throw written.refused(wrong, whatToWrite.apply(written));
    }
  }
}
