package org.brakerules.calc;

import java.util.List;
import java.util.stream.Stream;

/**
 * A calculation as a technician would write it down: what went in, the formula, each step with its
 * numbers, and what came out.
 *
 * @param id what is worked out, such as {@code stroke.power}
 * @param title the same in words
 * @param given what went in, as it was read or stated
 * @param assumed what went in without being known, each with why it was taken
 * @param formula the formula in words
 * @param steps the formula with the numbers in it, one step each
 * @param results what came out; empty if too much is missing
 * @param missing what must be known before the rest can be worked out
 * @param basis where the formula comes from
 */
public record Working(
    String id,
    String title,
    List<Named> given,
    List<Named> assumed,
    String formula,
    List<String> steps,
    List<Named> results,
    List<String> missing,
    Basis basis) {

  /**
   * A value with its name.
   *
   * @param name the name, such as {@code applied stroke}
   * @param value the value with its unit
   */
  public record Named(String name, String value) {}

  /** Keeps its own copies of the lists. */
  public Working {
    given = List.copyOf(given);
    assumed = List.copyOf(assumed);
    steps = List.copyOf(steps);
    results = List.copyOf(results);
    missing = List.copyOf(missing);
  }

  /** Starts a calculation that nothing has gone into yet. */
  public static Working of(String id, String title, String formula, Basis basis) {
    return new Working(
        id, title, List.of(), List.of(), formula, List.of(), List.of(), List.of(), basis);
  }

  /** The same calculation with more words in its title, which tell it from others of its id. */
  public Working titled(String more) {
    return new Working(id, title + more, given, assumed, formula, steps, results, missing, basis);
  }

  /** The same calculation with one more value that went in. */
  public Working given(String name, Object value) {
    return with(more(given, new Named(name, value.toString())), assumed, steps, results, missing);
  }

  /**
   * The same calculation, told that a value it was given is not known but was taken.
   *
   * @param name the name under which it was given
   * @param why why it was taken, such as {@code a common cam}
   * @throws IllegalArgumentException if nothing of that name was given
   */
  public Working assumed(String name, String why) {
    Named taken =
        given.stream()
            .filter(one -> one.name().equals(name))
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("No " + name + " was given."));
    List<Named> known = given.stream().filter(one -> !one.equals(taken)).toList();
    Named told = new Named(name, taken.value() + ", " + why);
    return with(known, more(assumed, told), steps, results, missing);
  }

  /** The same calculation with one more step. */
  public Working step(String step) {
    return with(given, assumed, more(steps, step), results, missing);
  }

  /** The same calculation with one more result. */
  public Working result(String name, Object value) {
    return with(given, assumed, steps, more(results, new Named(name, value.toString())), missing);
  }

  /** The same calculation with one more thing that must be known first. */
  public Working missing(String what) {
    return with(given, assumed, steps, results, more(missing, what));
  }

  /** The same calculation with two values that cannot both be right. */
  public Working contradicted(String one, Object value, String other, Object otherValue) {
    return given(one, value)
        .given(other, otherValue)
        .missing(one + " contradicts " + other + "; measure both again");
  }

  /** The calculation as a worked example of some lines, ended by a line feed each. */
  public String asText() {
    StringBuilder text = new StringBuilder(title).append('\n');
    given.forEach(one -> line(text, "given", one.name() + " " + one.value()));
    assumed.forEach(one -> line(text, "assumed", one.name() + " " + one.value()));
    line(text, "formula", formula);
    steps.forEach(step -> line(text, "work", step));
    results.forEach(one -> line(text, "result", one.name() + " " + one.value()));
    missing.forEach(what -> line(text, "missing", what));
    line(text, "basis", basis.inWords());
    return text.toString();
  }

  private Working with(
      List<Named> nowGiven,
      List<Named> nowAssumed,
      List<String> nowSteps,
      List<Named> nowResults,
      List<String> nowMissing) {
    return new Working(
        id, title, nowGiven, nowAssumed, formula, nowSteps, nowResults, nowMissing, basis);
  }

  private static void line(StringBuilder text, String label, String words) {
    text.append("  %-8s  %s\n".formatted(label, words));
  }

  private static <T> List<T> more(List<T> some, T one) {
    return Stream.concat(some.stream(), Stream.of(one)).toList();
  }
}
