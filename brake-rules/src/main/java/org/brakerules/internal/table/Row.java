package org.brakerules.internal.table;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.brakerules.model.text.NearestName;

/**
 * One row of a table, read cell by cell, with messages that name the row.
 *
 * @param resource the name of the table
 * @param line the line of the row
 * @param cells the text of each column
 */
public record Row(String resource, int line, Map<String, String> cells) {

  private static final Pattern DAY = Pattern.compile("([0-9]{4})-([0-9]{2})-([0-9]{2})");

  /**
   * The cell of a column, which may be empty.
   *
   * @throws RuleBaseException if there is no such column
   */
  public String text(String column) {
    String cell = cells.get(column);
    if (cell == null) {
      throw mistake("there is no column \"" + column + "\"; add it to the header");
    }
    return cell;
  }

  /**
   * The cell of a column.
   *
   * @throws RuleBaseException if it is empty or there is no such column
   */
  public String required(String column) {
    String cell = text(column);
    if (cell.isEmpty()) {
      throw mistake("\"" + column + "\" is empty; it must be stated");
    }
    return cell;
  }

  /** The cell of a column; empty if nothing stands there. */
  public Optional<String> optional(String column) {
    String cell = text(column);
    return cell.isEmpty() ? Optional.empty() : Optional.of(cell);
  }

  /** The entries of a cell, parted by semicolons. */
  public List<String> list(String column) {
    return optional(column).stream()
        .flatMap(cell -> Arrays.stream(cell.split(";")))
        .map(String::strip)
        .toList();
  }

  Optional<LocalDate> date(String column) {
    return optional(column).map(this::parseDate);
  }

  /**
   * Finds a name among those known.
   *
   * @throws RuleBaseException if it is none of them; it names the nearest
   */
  public <T> T known(
      String name, String what, Function<String, Optional<T>> find, Collection<String> known) {
    return find.apply(name)
        .orElseThrow(
            () ->
                mistake(
                    "\""
                        + name
                        + "\" is no "
                        + what
                        + NearestName.of(name, known)
                            .map(near -> "; did you mean \"" + near + "\"?")
                            .orElse("; known are " + String.join(", ", known))));
  }

  /** What is wrong with the row, with its place. */
  public RuleBaseException mistake(String what) {
    return new RuleBaseException(resource + " line " + line + ": " + what + ".");
  }

  /** The parser for all forms of dates takes longer to set up than all tables to read. */
  private static LocalDate day(String cell) {
    Matcher day = DAY.matcher(cell);
    if (!day.matches()) {
      throw new DateTimeException(cell);
    }
    return LocalDate.of(
        Integer.parseInt(day.group(1)),
        Integer.parseInt(day.group(2)),
        Integer.parseInt(day.group(3)));
  }

  private LocalDate parseDate(String cell) {
    try {
      return day(cell);
    } catch (DateTimeException e) {
      throw new RuleBaseException(
          resource + " line " + line + ": \"" + cell + "\" is no date; write 2026-11-20.", e);
    }
  }
}
