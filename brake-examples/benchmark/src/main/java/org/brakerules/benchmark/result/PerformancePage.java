package org.brakerules.benchmark.result;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.brakerules.benchmark.result.Section.Line;

/** The page about speed, made from the result file and from nothing else. */
public final class PerformancePage {

  private static final MathContext THREE_DIGITS = new MathContext(3);
  private static final MathContext TWO_DIGITS = new MathContext(2);
  private static final int LARGE = 1000;

  private PerformancePage() {}

  /** The page as Markdown. */
  public static String of(Results results) {
    return """
        # How fast it is

        Made by the measurements from [their result file](performance.json); do not edit it. [How to measure](../DEVELOPERS.md#how-to-measure).

        %s    %s

        Measured %s in %d rounds, each in processes of its own: %s, %d threads, %s, %s. Rule base %s. Within a round, what is compared is timed by turns of a quarter of a second and the median taken, so a machine that slows down slows both sides; ratios are taken within a round. Behind ± stands half the width of the interval that holds the mean with 95 %% confidence; what is called reached is reached by the whole of it.

        ## What was to be reached

        %s%s"""
        .formatted(
            results.caution().isEmpty() ? "" : "**" + results.caution() + "**\n\n",
            results.command(),
            results.date(),
            results.rounds(),
            results.machine().processor(),
            results.machine().threads(),
            results.machine().system(),
            results.machine().java(),
            results.ruleBase(),
            figures(results.figures()),
            results.sections().stream()
                .map(PerformancePage::section)
                .collect(Collectors.joining()));
  }

  private static String figures(List<Figure> figures) {
    return """
        | Figure | Measured | To reach | Stretch | Outcome |
        | --- | --- | --- | --- | --- |
        """
        + figures.stream().map(PerformancePage::row).collect(Collectors.joining());
  }

  private static String row(Figure figure) {
    Target target = figure.target();
    String than = target.atMost() ? "≤ " : "≥ ";
    OptionalDouble stretch = target.stretch();
    return "| %s | %s | %s | %s | %s |\n"
        .formatted(
            figure.title(),
            figure.measured().map(one -> shown(one, figure.unit())).orElse(""),
            than + shown(target.reach()) + " " + figure.unit(),
            stretch.isPresent() ? than + shown(stretch.getAsDouble()) + " " + figure.unit() : "",
            figure.outcome());
  }

  private static String section(Section section) {
    return """

        ## %s

        %s

        | What | Measured |
        | --- | --- |
        %s"""
        .formatted(
            section.title(),
            section.note(),
            section.lines().stream().map(PerformancePage::row).collect(Collectors.joining()));
  }

  private static String row(Line line) {
    return "| " + line.what() + " | " + shown(line.measured(), line.unit()) + " |\n";
  }

  private static String shown(Measured measured, String unit) {
    String error = measured.error() == 0 ? "" : " ± " + rounded(measured.error(), TWO_DIGITS);
    return (shown(measured.value()) + error + " " + unit).strip();
  }

  static String shown(double value) {
    return rounded(value, THREE_DIGITS);
  }

  /** Whole numbers stay whole; anything else is rounded to some digits. */
  private static String rounded(double value, MathContext digits) {
    boolean whole = value == Math.rint(value) || Math.abs(value) >= LARGE;
    return whole
        ? String.valueOf(Math.round(value))
        : BigDecimal.valueOf(value).round(digits).stripTrailingZeros().toPlainString();
  }
}
