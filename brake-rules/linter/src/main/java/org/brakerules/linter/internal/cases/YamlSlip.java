package org.brakerules.linter.internal.cases;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.util.List;
import java.util.Optional;
import org.brakerules.linter.internal.base.Mistake;
import org.brakerules.linter.internal.text.Spot;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** What keeps a file from being YAML, in the words of somebody who writes cases. */
final class YamlSlip {

  /**
   * A slip by the words of the parser.
   *
   * @param sign words that its message holds
   * @param found what was found
   * @param remedy what to write instead
   */
  private record Known(String sign, String found, String remedy) {}

  private static final Known UNKNOWN =
      new Known(
          "", "the file stops being YAML here", "write the line as docs/authors/cases.md shows");

  /** The first whose sign is in the message counts. */
  private static final List<Known> KNOWN =
      List.of(
          new Known(
              "TAB",
              "a tab, where only blanks may indent a line",
              "write two blanks instead of it"),
          new Known(
              "mapping values are not allowed",
              "a second colon in one line, or a line that is indented too far",
              "put a text that holds a colon in quotes; indent the line like its neighbours"),
          new Known(
              "quoted scalar",
              "a quote that is opened and not closed",
              "close it where the text ends"),
          new Known(
              "flow sequence",
              "a list that is opened with [ and not closed before this place",
              "write commas between its entries and close it with ]"),
          new Known(
              "flow mapping",
              "a brace that is opened with { and not closed before this place",
              "write commas between its entries and close it with }"),
          new Known(
              "could not find expected ':'",
              "a line without the colon behind its key",
              "write the key, a colon and a blank, and then the value"),
          new Known(
              "cannot start any token",
              "a text that begins with a character that means something else here",
              "put the text in quotes"),
          new Known(
              "undefined alias",
              "the star points elsewhere, where nothing is",
              "put a text that begins with a star in quotes"),
          new Known(
              "expected <block end>",
              "a line that is indented unlike its neighbours",
              "begin \"- case:\" at the margin, and indent its other keys by two blanks"));

  private YamlSlip() {}

  static Mistake in(String file, String text, JsonProcessingException slip) {
    Optional<Mark> mark = marked(slip).map(MarkedYAMLException::getProblemMark);
    Spot spot =
        mark.map(at -> new Spot(file, at.getLine() + 1, at.getColumn() + 1))
            .orElseGet(() -> spot(file, slip.getLocation()));
    Known known = known(marked(slip).map(YamlSlip::words).orElse(""));
    return new Mistake(insideText(spot, text), known.found(), known.remedy());
  }

  private static Known known(String words) {
    return KNOWN.stream().filter(one -> words.contains(one.sign())).findFirst().orElse(UNKNOWN);
  }

  private static String words(MarkedYAMLException marked) {
    return marked.getContext() + " " + marked.getProblem();
  }

  private static Optional<MarkedYAMLException> marked(Throwable slip) {
    return slip.getCause() instanceof MarkedYAMLException marked
        ? Optional.of(marked)
        : Optional.empty();
  }

  /** A slip that is noticed at the end of the file is told in its last line. */
  private static Spot insideText(Spot spot, String text) {
    int last = (int) text.stripTrailing().lines().count();
    return spot.line() > last ? new Spot(spot.file(), last, 1) : spot;
  }

  private static Spot spot(String file, JsonLocation location) {
    return new Spot(file, Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
  }
}
