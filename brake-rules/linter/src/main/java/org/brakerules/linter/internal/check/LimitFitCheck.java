package org.brakerules.linter.internal.check;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.brakerules.linter.LintKind;
import org.brakerules.linter.internal.base.RuleBase;
import org.brakerules.linter.internal.language.Attribute;
import org.brakerules.linter.internal.table.LimitRow;
import org.brakerules.model.part.PartKind;
import org.brakerules.model.reading.Station;

/** A row of a limit that no part can ever be in is a limit that nobody checks. */
final class LimitFitCheck implements Check {

  @Override
  public void check(RuleBase base, Findings findings) {
    base.limits()
        .flatMap(row -> LimitRow.of(row).stream())
        .forEach(
            row -> {
              row.impossible().forEach(attribute -> addImpossible(row, attribute, findings));
              checkStation(row, findings);
            });
  }

  private static void addImpossible(LimitRow row, String attribute, Findings findings) {
    String demands = String.join(" and ", row.demands(attribute));
    findings.add(
        LintKind.LIMIT_FITS_NOTHING,
        row.row().cell("applies-to").spot(),
        "no " + row.part().inWords() + " has " + demands + ", so the limit is never checked",
        row.demands(attribute).size() > 1
            ? "demand " + attribute + " once, with | between its values"
            : oneOf(row.part(), attribute));
  }

  private static String oneOf(PartKind part, String attribute) {
    return Remedy.oneOf(
        Optional.ofNullable(Attribute.of(part).get(attribute)).stream()
            .flatMap(known -> known.possible().stream())
            .map(value -> attribute + "=" + value)
            .toList());
  }

  /** A reading of a part with stations of its own is taken at one of them or at a spot on it. */
  private static void checkStation(LimitRow row, Findings findings) {
    Optional<Station> station = Station.byId(row.row().text("station"));
    if (station.isEmpty() || row.part().stations().contains(Station.WHOLE_PART)) {
      return;
    }
    boolean own = row.part().stations().contains(station.get());
    if (own ? !row.admits(station.get()) : isOfAnotherPart(station.get())) {
      List<String> stations =
          row.part().stations().stream().filter(row::admits).map(Station::id).toList();
      findings.add(
          LintKind.LIMIT_FITS_NOTHING,
          row.row().cell("station").spot(),
          "no %s of this row is at %s, so the limit is never checked"
              .formatted(row.part().inWords(), station.get().id()),
          Remedy.known(station.get().id(), stations, Remedy.oneOf(stations))
              + ", or leave it empty for the part's own station");
    }
  }

  private static boolean isOfAnotherPart(Station station) {
    return Arrays.stream(PartKind.values()).anyMatch(kind -> kind.stations().contains(station));
  }
}
