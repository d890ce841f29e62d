package org.brakerules.linter.internal.check;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.Cell;
import org.brakerules.linter.internal.base.Row;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.Attribute;
import org.brakerules.linter.internal.table.Selector;
import org.brakerules.linter.internal.table.Term;
import org.brakerules.model.part.PartKind;

/** The column {@code applies-to} chooses parts by what they have and can be. */
final class SelectorCheck implements Check {

  private static final String APPLIES_TO = "applies-to";
  private static final String NOT_STATED = "unknown";

  @Override
  public void check(RuleBase base, Findings findings) {
    Stream.concat(base.limits(), base.points())
        .forEach(
            row -> PartKind.byId(row.text("part")).ifPresent(kind -> check(row, kind, findings)));
  }

  private static void check(Row row, PartKind kind, Findings findings) {
    Cell cell = row.cell(APPLIES_TO);
    Map<String, Attribute> attributes = Attribute.of(kind);
    for (Term term : Selector.read(cell.text()).terms()) {
      Optional<Attribute> attribute = Optional.ofNullable(attributes.get(term.attribute()));
      if (!term.isWhole()) {
        add(
            cell,
            term,
            "\"" + term.text() + "\" does not say which parts the row is for",
            "write attribute=value, such as layout.camshaft=tube|split",
            findings);
      } else if (attribute.isEmpty()) {
        add(
            cell,
            term,
            "parts cannot be chosen by \"" + term.attribute() + "\"",
            Remedy.known(
                term.attribute(),
                attributes.keySet(),
                "write axle.kind, or layout. or part. with a property of the layout or the "
                    + kind.inWords()),
            findings);
      } else {
        checkValues(cell, term, attribute.get(), findings);
      }
    }
  }

  private static void checkValues(Cell cell, Term term, Attribute attribute, Findings findings) {
    for (String value : term.values()) {
      if (value.equals(NOT_STATED)) {
        add(
            cell,
            term,
            term.attribute() + "=unknown chooses nothing: what is not stated fits until it is",
            "take \"unknown\" out",
            findings);
      } else if (attribute.value(value).isEmpty()) {
        add(
            cell,
            term,
            term.attribute() + " is never \"" + value + "\", so no part would fit",
            attribute.hasWords()
                ? Remedy.known(value, attribute.words(), Remedy.oneOf(attribute.words()))
                : "write a value with its unit, such as 16.5 in",
            findings);
      }
    }
  }

  private static void add(Cell cell, Term term, String message, String remedy, Findings findings) {
    findings.add(LintKind.SELECTOR, cell.spotAt(term.start()), message, remedy);
  }
}
